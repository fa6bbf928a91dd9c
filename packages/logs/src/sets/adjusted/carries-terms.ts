import { leastSquaresWeights } from '@standstill/numerics';
import type { AdjustmentRows } from './adjustment-rows.ts';
import type { AdjustmentTerm } from './adjustment-term.ts';

/** Degrees of freedom that must be left for the scatter, in all and in each set. */
const fewestInAll = 3;
const fewestInEachSet = 1;

/**
 * Whether the stops carry so many terms: enough of them must be left to show the scatter, in all and in each set.
 *
 * @param rows - both sets
 * @param terms - beside the constant and the change; no mixes of each other
 * @returns true where they do
 */
export function carriesTerms({ ones, change }: AdjustmentRows, terms: readonly AdjustmentTerm[]): boolean {
  const columns = [ones, change, ...terms.map(({ column }) => column)];
  if (ones.length - columns.length < fewestInAll) return false;
  const weights = leastSquaresWeights(columns);
  const left = [0, 0];
  change.forEach((set, row) => {
    const taken = columns.reduce((sum, column, j) => sum + column[row]! * weights[j]![row]!, 0);
    left[set] = left[set]! + 1 - taken;
  });
  return Math.min(...left) >= fewestInEachSet - 1e-9;
}
