import { noncentralTCdf } from '../distributions/noncentral-t-cdf.ts';
import { tQuantile } from '../distributions/t-quantile.ts';
import { requireRange } from '../refuse/require-range.ts';

/** What a comparison of two equal sets should be able to see. */
export interface ComparisonGoal {
  /** δ, difference of the means to be seen, unit of the values; above 0. */
  readonly difference: number;
  /** σ of single values within a set, same unit; above 0. */
  readonly standardDeviation: number;
  /** α, 1, how often a difference may be claimed where there is none. 0.05 where not given. */
  readonly level?: number;
  /** Whether a difference is looked for either way. 'two' where not given. */
  readonly sides?: 'one' | 'two';
  /** Which means are set against each other. Two sets, first minus second, where not given. */
  readonly design?: ComparisonDesign;
}

/** A weighted sum of the means of sets of one size. */
export interface ComparisonDesign {
  /** m, 1, sets that are driven. */
  readonly sets: number;
  /** Σ c², 1, of the weights of their means: 2 for a difference, 1.5 where one mean is set against two. */
  readonly squaredWeights: number;
}

const plainDifference: ComparisonDesign = { sets: 2, squaredWeights: 2 };

/**
 * How likely equal sets of n values are to show a difference of a given size.
 *
 * Equation: power = P(|T| > t_(1-α/2, ν)), T noncentral with ν = m (n - 1) and δ/σ √(n / Σ c²); one-sided
 * P(T > t_(1-α, ν)); m = 2 and Σ c² = 2 for two sets
 * Assumes: values independent and normal, all sets spread alike.
 *
 * @param goal - difference and spread in one unit, level, sides, design
 * @param count - n, 1, values in each set; need not be whole
 * @returns power, 0 to 1
 * @throws OutOfRangeError where n is not above 1, or a part of the goal is not above 0
 * Source: [r-power-t-test]
 * @example
 * tTestPower({ difference: 1, standardDeviation: 1 }, 20) // => 0.868953
 */
export function tTestPower(goal: ComparisonGoal, count: number): number {
  const difference = requireRange('difference', goal.difference, '', Number.MIN_VALUE, Number.MAX_VALUE);
  const spread = requireRange(
    'standard deviation',
    goal.standardDeviation,
    '',
    Number.MIN_VALUE,
    Number.MAX_VALUE,
  );
  const level = requireRange('level', goal.level ?? 0.05, '', 1e-9, 0.999);
  const { sets, squaredWeights } = goal.design ?? plainDifference;
  const degreesOfFreedom = sets * (requireRange('number of values', count, '', 1.001, Number.MAX_VALUE) - 1);
  const noncentrality = (difference / spread) * Math.sqrt(count / squaredWeights);
  const twoSided = (goal.sides ?? 'two') === 'two';
  const critical = -tQuantile(twoSided ? level / 2 : level, degreesOfFreedom);
  const above = noncentralTCdf(-critical, degreesOfFreedom, -noncentrality);
  return twoSided ? above + noncentralTCdf(-critical, degreesOfFreedom, noncentrality) : above;
}
