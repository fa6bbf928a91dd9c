import { differenceShown, requireRange, runsNeeded, spreadInterval } from '@standstill/numerics';
import { comparisonDesigns } from './comparison-designs.ts';
import { fewestRuns } from '../fewest-runs.ts';
import type { PlanInput, RunsPlan } from './runs-plan.ts';

/**
 * How many runs each set takes so that a difference of the wanted size is likely to show, and what so many do show.
 *
 * Equation: `runsNeeded` with m sets and Σ c² of their weights (2 and 2 without control, 3 and 1.5 with a repeat, 4 and 4
 * with a reference car), rounded up to an even number, four at least; range by the χ² interval of a measured spread
 * Assumes: runs independent and normal, all sets spread alike.
 *
 * @param input - difference to be seen, m; spread of single stops, m, and where it comes from; chances, 1; control
 * @returns runs in each set, 1, and the difference that they show, m
 * @throws OutOfRangeError where a number is outside
 * Source: [r-power-t-test], [nist-handbook]
 */
export function planRuns(input: PlanInput): RunsPlan {
  const { resolution, spread: from, power = 0.8, level = 0.05, control = 'none' } = input;
  requireRange('power', power, '', 0.5, 1 - 1e-9);
  const design = comparisonDesigns[control];
  const spread = from.standardDeviation;
  const spreadLimits = from.origin === 'measured' ? spreadInterval(from) : { low: spread, high: spread };
  const runsFor = (standardDeviation: number): number | null =>
    evenRuns(runsNeeded({ difference: resolution, standardDeviation, level, design }, power).runs);
  const runsPerSet = runsFor(spread);
  return {
    resolution,
    spread,
    spreadOrigin: from.origin,
    spreadInterval: spreadLimits,
    power,
    level,
    control,
    runsPerSet,
    runsPerSetRange: { low: runsFor(spreadLimits.low), high: runsFor(spreadLimits.high) },
    shows:
      runsPerSet === null
        ? null
        : differenceShown({ standardDeviation: spread, level, design }, runsPerSet, power),
  };
}

/** As many out as back; null where nobody drives so many. */
function evenRuns(runs: number): number | null {
  return Number.isFinite(runs) ? Math.max(fewestRuns, 2 * Math.ceil(runs / 2)) : null;
}
