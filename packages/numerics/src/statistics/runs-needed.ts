import { requireRange } from '../refuse/require-range.ts';
import { bracketedRoot } from '../solve/bracketed-root.ts';
import { tTestPower, type ComparisonGoal } from './t-test-power.ts';

export interface RunsNeeded {
  /** Values in each set, whole, 2 at least. */
  readonly runs: number;
  /** n at which the power is exactly as asked, 1; 2 where two are enough already. */
  readonly exact: number;
  /** Power with `runs`, 0 to 1. */
  readonly power: number;
}

/** Beyond this many nobody measures; the answer then is "more". */
const most = 1e6;

/**
 * How many runs each set needs so that a difference of a given size is likely to show.
 *
 * Equation: n with `tTestPower`(n) = power, rounded up
 * Assumes: values independent and normal, all sets of one size and spread.
 *
 * @param goal - difference and spread in one unit, level, sides, design
 * @param power - how likely a difference of that size should be seen, 1, above 0 and under 1; 0.8 where not given
 * @returns runs in each set, 1; Infinity where more than a million are needed
 * @throws OutOfRangeError where a part of the goal or the power is outside
 * Source: [r-power-t-test]
 * @example
 * runsNeeded({ difference: 1, standardDeviation: 1 }, 0.9).runs // => 23
 */
export function runsNeeded(goal: ComparisonGoal, power = 0.8): RunsNeeded {
  requireRange('power', power, '', 1e-6, 1 - 1e-9);
  const missing = (count: number): number => tTestPower(goal, count) - power;
  if (missing(2) >= 0) return { runs: 2, exact: 2, power: tTestPower(goal, 2) };
  let high = 4;
  while (missing(high) < 0) {
    if (high > most) return { runs: Infinity, exact: Infinity, power: tTestPower(goal, high) };
    high *= 2;
  }
  const exact = bracketedRoot(missing, { low: high / 2, high, tolerance: 1e-9 * high });
  const runs = Math.ceil(exact - 1e-7);
  return { runs, exact, power: tTestPower(goal, runs) };
}
