import type { ComparisonDesign } from '@standstill/numerics';
import type { RunsPlan } from './runs-plan.ts';

/** Weights of the sets' means: after minus before; after minus the mean of before and repeat; difference of differences. */
export const comparisonDesigns: Readonly<Record<RunsPlan['control'], ComparisonDesign>> = {
  none: { sets: 2, squaredWeights: 2 },
  repeat: { sets: 3, squaredWeights: 1.5 },
  'reference-car': { sets: 4, squaredWeights: 4 },
};
