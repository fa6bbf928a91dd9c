import { differenceShown } from '@standstill/numerics';
import { comparisonDesigns } from './comparison-designs.ts';
import type { RunsPlan } from './runs-plan.ts';

/**
 * What so many runs in each set are likely to show, where a plan asks for more than anybody drives.
 *
 * Equation: as `differenceShown` with the weights of `planRuns`
 * Assumes: as `planRuns`.
 *
 * @param plan - spread of single stops, m; chances, 1; control
 * @param runs - in each set, 1
 * @returns the difference, m
 * Source: [r-power-t-test]
 */
export function shownByRuns(
  { spread, level, power, control }: Pick<RunsPlan, 'spread' | 'level' | 'power' | 'control'>,
  runs: number,
): number {
  return differenceShown(
    { standardDeviation: spread, level, design: comparisonDesigns[control] },
    runs,
    power,
  );
}
