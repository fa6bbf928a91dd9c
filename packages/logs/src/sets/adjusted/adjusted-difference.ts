import { leastSquares, tInterval, type LeastSquares } from '@standstill/numerics';
import type { CountedDistances } from '../counted-distances.ts';
import type { IntervalValue } from '../stop-set.ts';
import type { AdjustedDifference, Adjustment, AdjustmentEffect } from './adjustment.ts';
import { adjustmentRows, type AdjustmentRows } from './adjustment-rows.ts';
import { chosenTerms } from './chosen-terms.ts';
import type { AdjustmentTerm } from './adjustment-term.ts';

/** Degrees of freedom that are left for the scatter, under which no term is added. */
const fewestLeft = 3;

/**
 * The difference between two sets with run order, warm-up of the first run and recorded conditions taken out, as far as
 * the stops carry it.
 *
 * Equation: y = a + d s + b (r − r̄) + w [r = 1] + Σ c_k (x_k − x̄_k), s 0 before and 1 after, by least squares; two
 * slopes b where their difference leaves out zero, d then at r̄; d ± t s_d, ν = n − terms, 3 at least
 * Assumes: conditions exact; errors independent, about normal, of one size in both sets; a set of its own run numbers
 * starts anew at 1: what drifts on from one set into the next is not told from the change (a repeat or a reference car
 * tells). Terms are taken in a fixed order, never by how much they explain.
 * Valid: three stops in each set, or four and three for more than the run order.
 *
 * @param before - counted distances, m, with run numbers and conditions
 * @param after - likewise
 * @returns the difference, m, with each effect; and what was not taken out, and why
 * Source: [fisher-1935-covariance]
 */
export function adjustedDifference(before: CountedDistances, after: CountedDistances): Adjustment {
  const rows = adjustmentRows(before, after);
  const { terms, notAdjusted } = chosenTerms(rows, fewestLeft);
  if (terms.length === 0) return { adjusted: null, notAdjusted };
  return { adjusted: fitted(rows, terms), notAdjusted };
}

function fitted(rows: AdjustmentRows, terms: readonly AdjustmentTerm[]): AdjustedDifference {
  const common = fit(rows, terms);
  const hasOrder = terms.some(({ name }) => name === 'run-order');
  if (!hasOrder) return { ...common, slope: 'none', slopeReason: 'no-run-order' };
  if (common.degreesOfFreedom <= fewestLeft || !rows.carriesTwoSlopes)
    return { ...common, slope: 'common', slopeReason: 'too-few-stops' };
  const others = terms.filter(({ name }) => name !== 'run-order');
  const [slopeBefore, slopeAfter] = rows.slopes;
  const apart = leastSquares(columnsOf(rows, [...terms, slopeAfter]), rows.distances);
  const { low, high } = intervalAt(apart, terms.length + 2);
  return low > 0 || high < 0
    ? { ...fit(rows, [slopeBefore, slopeAfter, ...others]), slope: 'separate', slopeReason: 'differ' }
    : { ...common, slope: 'common', slopeReason: 'alike' };
}

function fit(
  rows: AdjustmentRows,
  terms: readonly AdjustmentTerm[],
): Omit<AdjustedDifference, 'slope' | 'slopeReason'> {
  const result = leastSquares(columnsOf(rows, terms), rows.distances);
  const takenOut = terms.map(({ name, unit }, place): AdjustmentEffect => ({
    name,
    effect: intervalAt(result, place + 2),
    unit,
  }));
  const { residualStandardDeviation, degreesOfFreedom } = result;
  return { difference: intervalAt(result, 1), takenOut, residualStandardDeviation, degreesOfFreedom };
}

function columnsOf(rows: AdjustmentRows, terms: readonly AdjustmentTerm[]): readonly (readonly number[])[] {
  return [rows.ones, rows.change, ...terms.map(({ column }) => column)];
}

function intervalAt(result: LeastSquares, place: number): IntervalValue {
  const value = result.coefficients[place]!;
  const standardError = result.standardErrors[place]!;
  const { degreesOfFreedom } = result;
  return { value, ...tInterval({ value, standardError, degreesOfFreedom }, 0.95) };
}
