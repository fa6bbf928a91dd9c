import type { StopSetComparison } from '@standstill/logs';
import type { Comparison } from '../results/log-report.ts';

type Figures = Pick<
  Comparison,
  'difference_m' | 'differencePercent' | 'bootstrap_m' | 'welch' | 'permutation' | 'bestOfEach' | 'runsNeeded'
>;

/** The statistics of two sets as published. */
export function comparisonFigures(compared: StopSetComparison): Figures {
  const { welch, permutation, bestOfEach, runsNeeded, bootstrap } = compared;
  return {
    difference_m: { ...compared.difference },
    differencePercent: { ...compared.differencePercent },
    bootstrap_m: { ...bootstrap.difference },
    welch: welch === null ? null : { ...welch },
    permutation: { ...permutation },
    bestOfEach: {
      difference_m: bestOfEach.difference,
      expectedGainBefore_m: bestOfEach.expectedGainBefore,
      expectedGainAfter_m: bestOfEach.expectedGainAfter,
    },
    runsNeeded: { difference_m: runsNeeded.difference, runsPerSet: runsNeeded.runsPerSet },
  };
}
