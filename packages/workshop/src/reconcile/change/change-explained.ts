import { latinHypercubeColumn, normalQuantile } from '@standstill/numerics';
import type { StopSetComparison } from '@standstill/logs';
import type { Estimate } from '../../results/estimate.ts';
import type { Reconciliation } from '../../results/reconciliation.ts';
import { shown } from '../../proof/comparison-sentence.ts';
import { intervalOf } from '../../draws/interval-of.ts';
import { weightedEstimate } from '../learn/weighted-estimate.ts';

export type Change = NonNullable<Reconciliation['change']>;

export interface ChangeInput {
  /** m, by the central values, and over draws from the job. */
  readonly central: number;
  readonly byJob: Float64Array;
  /** m, over the weighted draws. */
  readonly drawn: Float64Array;
  readonly weights: Float64Array;
  /** False where the stops before do not fit the job, so that nothing was learned that holds. */
  readonly fits: boolean;
  /** Null without stops after. */
  readonly compared: StopSetComparison | null;
  readonly seed: number;
}

/** Half-width of a 95 % interval over the standard deviation of a normal quantity. */
const normalReach = 1.96;

/**
 * Sets the change that the brakes were expected to make against the one that was measured.
 *
 * Equation: share = expected / measured and unexplained = measured − expected, over the weighted draws, each with a measured
 * change of its own, normal by either half of its interval
 * Assumes: the expectation errs independently of the measured change; the day's unknowns are the same in both sets.
 *
 * @param input - changes, m; weights
 * @returns the change, m; no share where the measured change can't be told from zero, or the stops do not fit the job
 */
export function changeExplained(input: ChangeInput): Change {
  const { central, drawn, weights, fits, compared, seed } = input;
  const byJob = intervalOf(central, input.byJob);
  const learned = weightedEstimate(drawn, weights);
  const expected = fits ? learned : hull(byJob, learned);
  if (compared === null)
    return { byJob_m: byJob, expected_m: expected, measured_m: null, share: null, unexplained_m: null };
  const measured = measuredDraws(compared.difference, drawn.length, seed);
  const share = fits && shown(compared);
  const unexplained = weightedEstimate(
    measured.map((each, i) => each - drawn[i]!),
    weights,
  );
  return {
    byJob_m: byJob,
    expected_m: expected,
    measured_m: { ...compared.difference },
    share: share
      ? centered(
          expected.value / compared.difference.value,
          weightedEstimate(
            measured.map((each, i) => drawn[i]! / each),
            weights,
          ),
        )
      : null,
    unexplained_m: fits ? centered(compared.difference.value - expected.value, unexplained) : null,
  };
}

function hull(one: Estimate, other: Estimate): Estimate {
  return { value: one.value, low: Math.min(one.low, other.low), high: Math.max(one.high, other.high) };
}

function centered(value: number, { low, high }: Estimate): Estimate {
  return { value, low: Math.min(low, value), high: Math.max(high, value) };
}

/** The two halves of a lopsided interval keep their own spreads. */
function measuredDraws({ value, low, high }: Estimate, draws: number, seed: number): Float64Array {
  const column = new Float64Array(draws);
  latinHypercubeColumn({ key: 'measured change', seed }, column);
  return column.map((share) => {
    const normal = normalQuantile(Math.max(share, 1e-9));
    return value + (normal < 0 ? value - low : high - value) * (normal / normalReach);
  });
}
