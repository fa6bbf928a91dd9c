import type { CountedDistances } from '../counted-distances.ts';
import type { CovariateName } from '../stop-set.ts';
import type { AdjustmentEffect } from './adjustment.ts';
import type { AdjustmentTerm } from './adjustment-term.ts';

/** Both sets' stops as rows of one regression, the stops before first. */
export interface AdjustmentRows {
  readonly distances: readonly number[];
  readonly ones: readonly number[];
  /** 0 before, 1 after. */
  readonly change: readonly number[];
  /** What might be taken out, in the order in which it is. */
  readonly candidates: readonly AdjustmentTerm[];
  /** What was written down for some of the stops only. */
  readonly incomplete: readonly CovariateName[];
  /** Run order within the set before and within the set after, each zero in the other set and at `middleRun`. */
  readonly slopes: readonly [before: AdjustmentTerm, after: AdjustmentTerm];
  /** Run number at which two slopes give the difference that one slope gives. */
  readonly middleRun: number;
  /** Whether each set has the five stops under which a slope of its own is hardly known beside a first run. */
  readonly carriesTwoSlopes: boolean;
}

const conditions: readonly (readonly [CovariateName, AdjustmentEffect['unit']])[] = [
  ['direction', 'm'],
  ['headWind', 'm per m/s'],
  ['surfaceTemperature', 'm per K'],
  ['tireTemperature', 'm per K'],
  ['startTemperature', 'm per K'],
];

/**
 * Lays both sets out as rows: run order first, then the first run, then what was written down of each stop.
 *
 * @param before - counted distances, m, with run numbers and conditions
 * @param after - likewise
 * @returns the rows
 */
export function adjustmentRows(before: CountedDistances, after: CountedDistances): AdjustmentRows {
  const runs = [...before.runs, ...after.runs];
  const ones = runs.map(() => 1);
  const change = runs.map((_, row) => (row < before.runs.length ? 0 : 1));
  const order = centered(runs);
  const middleRun = middleOf(before.runs, after.runs);
  const within = (set: 0 | 1): readonly number[] =>
    runs.map((run, row) => (change[row] === set ? run - middleRun : 0));
  const covariates = [...before.covariates, ...after.covariates];
  const written = conditions.map(([name, unit]) => {
    const values = covariates.map((stop) => stop[name]);
    return { name, unit, values: values.filter((value) => value !== undefined) };
  });
  const complete = written.filter(({ values }) => values.length === runs.length);
  return {
    distances: [...before.distances, ...after.distances],
    ones,
    change,
    candidates: [
      { name: 'run-order', unit: 'm per run', column: order },
      { name: 'first-run', unit: 'm', column: centered(runs.map((run) => (run === 1 ? 1 : 0))) },
      ...complete.map(({ name, unit, values }): AdjustmentTerm => ({
        name,
        unit,
        // ±1, so that the effect is that of out over back
        column: centered(name === 'direction' ? values.map((value) => value / 2) : values),
      })),
    ],
    incomplete: written
      .filter(({ values }) => values.length > 0 && values.length < runs.length)
      .map(({ name }) => name),
    slopes: [
      { name: 'run-order-before', unit: 'm per run', column: within(0) },
      { name: 'run-order-after', unit: 'm per run', column: within(1) },
    ],
    middleRun,
    carriesTwoSlopes: Math.min(before.runs.length, after.runs.length) >= 5,
  };
}

/** (S_b r̄_a + S_a r̄_b) / (S_b + S_a), S = Σ (r − r̄)²: nearer to the middle of the set that knows less of its slope. */
function middleOf(before: readonly number[], after: readonly number[]): number {
  const [ofBefore, ofAfter] = [squaresOf(before), squaresOf(after)];
  return (ofBefore * meanOf(after) + ofAfter * meanOf(before)) / (ofBefore + ofAfter);
}

function squaresOf(runs: readonly number[]): number {
  return centered(runs).reduce((sum, away) => sum + away ** 2, 0);
}

function centered(values: readonly number[]): readonly number[] {
  const mean = meanOf(values);
  return values.map((value) => value - mean);
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
