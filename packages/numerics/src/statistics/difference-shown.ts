import { requireRange } from '../refuse/require-range.ts';
import { bracketedRoot } from '../solve/bracketed-root.ts';
import { tTestPower, type ComparisonGoal } from './t-test-power.ts';

/**
 * The least difference that sets of n values each are likely to show: what `runsNeeded` asks, the other way around.
 *
 * Equation: δ with `tTestPower`(δ, n) = power
 * Assumes: values independent and normal, all sets of one size and spread.
 *
 * @param goal - spread in any unit, level, sides, design
 * @param count - n, 1, values in each set, 2 at least
 * @param power - how likely a difference of that size should be seen, 1, from 0.5 to under 1; 0.8 where not given
 * @returns difference, unit of the spread
 * @throws OutOfRangeError where n is below 2, or a part of the goal or the power is outside
 * Source: [r-power-t-test]
 * @example
 * differenceShown({ standardDeviation: 1 }, 23, 0.9125) // => 1.000003
 */
export function differenceShown(
  goal: Omit<ComparisonGoal, 'difference'>,
  count: number,
  power = 0.8,
): number {
  requireRange('power', power, '', 0.5, 1 - 1e-9);
  requireRange('number of values', count, '', 2, Number.MAX_SAFE_INTEGER);
  const spread = requireRange(
    'standard deviation',
    goal.standardDeviation,
    '',
    Number.MIN_VALUE,
    Number.MAX_VALUE,
  );
  const missing = (ratio: number): number =>
    tTestPower({ ...goal, standardDeviation: 1, difference: ratio }, count) - power;
  let high = 1;
  while (missing(high) < 0) high *= 2;
  return spread * bracketedRoot(missing, { low: 1e-12, high, tolerance: 1e-10 * high });
}
