import { intervalOf } from '../draws/interval-of.ts';
import type { DrawnRange } from '../draws/drawn-range.ts';
import type { LoadState } from '../predict/load-state.ts';
import { shareOf } from '../predict/share-of.ts';
import type { Estimate } from '../results/estimate.ts';
import { curveDecelerations, curvePlaceOf, placeOf } from './balance-figures.ts';
import type { StateFigureName, StateFigures } from './balance-figures.ts';

/** The draws of one state of load of one set-up, by figure. */
export interface StateDraws {
  /** NaN in draws without an answer. */
  readonly of: (figure: StateFigureName) => Float64Array;
  /** One point of a curve. */
  readonly curve: (curve: 'frontAdhesion' | 'rearAdhesion', index: number) => Float64Array;
}

/** The draws of one set-up in one state of load. */
export function stateDraws({ from, to, bySetUp }: DrawnRange, setUp: number, state: LoadState): StateDraws {
  const length = to - from;
  const all = bySetUp[setUp] ?? new Float64Array();
  const at = (place: number): Float64Array => all.subarray(place * length, (place + 1) * length);
  return {
    of: (figure) => at(placeOf(state, figure)),
    curve: (curve, index) => at(curvePlaceOf(state, curve) + Math.min(index, curveDecelerations.length - 1)),
  };
}

/** A central value with its interval; null where it is not a number. */
export function estimateOf(figures: StateFigures, draws: StateDraws, name: StateFigureName): Estimate | null {
  const value = figures[name];
  return Number.isFinite(value) ? intervalOf(value, draws.of(name)) : null;
}

/** The same for figures that are always there. */
export function knownEstimate(figures: StateFigures, draws: StateDraws, name: StateFigureName): Estimate {
  return intervalOf(figures[name], draws.of(name));
}

/** Share of the draws in which a flag is up. */
export function flagShare(figures: StateFigures, draws: StateDraws, name: StateFigureName): number {
  return shareOf(draws.of(name), figures[name] === 1 ? 1 : 0);
}
