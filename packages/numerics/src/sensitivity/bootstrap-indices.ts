import { randomStream } from '../sample/random-stream.ts';
import type { Interval } from '../statistics/interval.ts';
import { sortedQuantile } from '../statistics/sorted-quantile.ts';
import { estimateIndices } from './estimate-indices.ts';
import type { SensitivitySample } from './sobol-indices.ts';

/** 95 % intervals of one group's indices. */
export interface IndexIntervals {
  readonly first: Interval;
  readonly total: Interval;
}

/**
 * Answers how sure Sobol indices are, by drawing the rows they come from anew.
 *
 * Equation: quantiles 2.5 % and 97.5 % of the indices over rows drawn with replacement
 *
 * @param sample - runs from A, B and every mix
 * @param plan - seed; how many times to draw, 1
 * @returns intervals of S and S_T, one for each group, 1
 * Source: [efron-tibshirani], [saltelli-2010]
 */
export function bootstrapIndices(
  sample: SensitivitySample,
  { seed, redraws }: { readonly seed: number; readonly redraws: number },
): readonly IndexIntervals[] {
  const stream = randomStream(seed, 'sensitivity');
  const count = sample.fromA.length;
  const rows = new Uint32Array(count);
  const firsts = sample.mixed.map(() => new Float64Array(redraws));
  const totals = sample.mixed.map(() => new Float64Array(redraws));
  for (let draw = 0; draw < redraws; draw += 1) {
    for (let i = 0; i < count; i += 1) rows[i] = stream.below(count);
    const { first, total } = estimateIndices(sample, rows);
    firsts.forEach((column, group) => (column[draw] = first[group]!));
    totals.forEach((column, group) => (column[draw] = total[group]!));
  }
  return firsts.map((first, group) => ({ first: middle(first), total: middle(totals[group]!) }));
}

function middle(values: Float64Array): Interval {
  const sorted = values.sort();
  return { low: sortedQuantile(sorted, 0.025), high: sortedQuantile(sorted, 0.975) };
}
