import { NotBracketedError } from './not-bracketed-error.ts';

export interface RootBracket {
  /** One end of the bracket, in the unit of x. */
  readonly low: number;
  /** The other end, in the unit of x. */
  readonly high: number;
  /** Greatest accepted error of the root, in the unit of x; 0 asks for all digits that there are. */
  readonly tolerance: number;
}

/** What the search carries from step to step. Allocated once for a search. */
interface Search {
  /** Best x so far and the function there. */
  best: number;
  valueAtBest: number;
  /** The end with the other sign. */
  other: number;
  valueAtOther: number;
  /** The best x of the step before. */
  previous: number;
  valueAtPrevious: number;
  /** Length of this step and of the one before. */
  step: number;
  stepBefore: number;
}

const mostSteps = 200;

/**
 * Where a continuous function crosses zero between two places of opposite sign.
 *
 * Equation: Brent's method: inverse quadratic interpolation or secant where they converge, halving where they do not.
 * Assumes: the function is continuous between the ends.
 * Valid: any two ends with values of opposite sign (or one of them zero).
 *
 * @param value - f(x), any unit
 * @param bracket - the two ends and the tolerance, in the unit of x
 * @returns x with f(x) = 0 to the tolerance (plus four rounding units of x), in the unit of x
 * @throws NotBracketedError where both ends have the same sign or the function gives NaN
 * Source: [brent-1973]
 * @example
 * bracketedRoot((x) => x * x - 2, { low: 0, high: 2, tolerance: 1e-12 }) // => 1.41421
 */
export function bracketedRoot(value: (x: number) => number, bracket: RootBracket): number {
  const search = startSearch(value, bracket);
  for (let count = 0; count < mostSteps; count += 1) {
    keepBestFirst(search);
    const tolerance = 2 * Number.EPSILON * Math.abs(search.best) + 0.5 * bracket.tolerance;
    const half = 0.5 * (search.other - search.best);
    if (Math.abs(half) <= tolerance || search.valueAtBest === 0) return search.best;
    chooseStep(search, half, tolerance);
    advance(search, value, Math.abs(search.step) > tolerance ? search.step : Math.sign(half) * tolerance);
  }
  return search.best;
}

function startSearch(value: (x: number) => number, { low, high }: RootBracket): Search {
  const valueAtLow = value(low);
  const valueAtHigh = value(high);
  const opposite = (valueAtLow <= 0 && valueAtHigh >= 0) || (valueAtLow >= 0 && valueAtHigh <= 0);
  if (!opposite) throw new NotBracketedError(low, high, valueAtLow, valueAtHigh);
  return {
    best: high,
    valueAtBest: valueAtHigh,
    other: low,
    valueAtOther: valueAtLow,
    previous: low,
    valueAtPrevious: valueAtLow,
    step: high - low,
    stepBefore: high - low,
  };
}

/** Swaps the two ends where the other end is the closer one to zero. */
function keepBestFirst(search: Search): void {
  if (Math.abs(search.valueAtOther) >= Math.abs(search.valueAtBest)) return;
  search.previous = search.best;
  search.valueAtPrevious = search.valueAtBest;
  search.best = search.other;
  search.valueAtBest = search.valueAtOther;
  search.other = search.previous;
  search.valueAtOther = search.valueAtPrevious;
}

/** Sets the next step: interpolated where that shrinks the bracket fast enough, else half of it. */
function chooseStep(search: Search, half: number, tolerance: number): void {
  const shrinking = Math.abs(search.valueAtPrevious) > Math.abs(search.valueAtBest);
  if (shrinking && Math.abs(search.stepBefore) >= tolerance) {
    const step = interpolatedStep(search, half);
    const forward = step / half;
    const short = Math.abs(step) < 0.5 * Math.abs(search.stepBefore);
    const inside = forward > 0 && Math.abs(step) < 1.5 * Math.abs(half) - 0.5 * tolerance;
    if (short && inside) {
      search.stepBefore = search.step;
      search.step = step;
      return;
    }
  }
  search.step = half;
  search.stepBefore = half;
}

function interpolatedStep(search: Search, half: number): number {
  const s = search.valueAtBest / search.valueAtPrevious;
  if (search.previous === search.other) return (2 * half * s) / (s - 1);
  const q = search.valueAtPrevious / search.valueAtOther;
  const r = search.valueAtBest / search.valueAtOther;
  const numerator = s * (2 * half * q * (q - r) - (search.best - search.previous) * (r - 1));
  return -numerator / ((q - 1) * (r - 1) * (s - 1));
}

/** Takes the step and keeps the root between `best` and `other`. */
function advance(search: Search, value: (x: number) => number, step: number): void {
  search.previous = search.best;
  search.valueAtPrevious = search.valueAtBest;
  search.best += step;
  search.valueAtBest = value(search.best);
  if (Number.isNaN(search.valueAtBest)) {
    throw new NotBracketedError(search.previous, search.best, search.valueAtPrevious, search.valueAtBest);
  }
  if (search.valueAtBest > 0 === search.valueAtOther > 0) {
    search.other = search.previous;
    search.valueAtOther = search.valueAtPrevious;
    search.stepBefore = search.best - search.previous;
    search.step = search.stepBefore;
  }
}
