import { randomStream, sortedQuantile } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import type { Estimate } from '../results/estimate.ts';
import type { Comparison } from '../results/log-report.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import type { ModelExpectation } from './compare-runs.ts';
import type { LeadingDifference } from './leading-difference.ts';

/** Where the model holds, what is left of a measured change. */
const restOfRoad = ['tires', 'surface', 'driver', 'warm-up'];
const ofModel = 'what the model lacks';

type Expectation = NonNullable<Comparison['expectation']>;

const draws = 20_000;
/** Half-width of a 95 % interval over the standard deviation of a normal quantity. */
const normalReach = 1.96;

/**
 * Sets what the model expects of a change against what was measured: how much of the measured change the brakes can
 * explain.
 *
 * Equation: share = expected / measured, unexplained = measured − expected; intervals are the 2.5 % and 97.5 % quantiles
 * of 20,000 draws of both, normal by their own intervals
 * Assumes: model and measurement err independently of each other.
 *
 * @param measured - the difference that was measured, m, and whether it can be told from nothing
 * @param expected - set-up and the change that the model expects, m
 * @param seed - of the draws
 * @param units - of the sentence
 * @returns expected and unexplained change, m, and the share, 1; no share where the measured change may be zero
 */
export function explain(
  measured: LeadingDifference,
  expected: ModelExpectation,
  seed: number,
  units: UnitSystem,
): Expectation {
  const { difference } = expected;
  const pairs = drawPairs(measured.difference, difference, seed);
  const unexplained = estimateOf(
    measured.difference.value - difference.value,
    pairs.map(([seen, model]) => seen - model),
  );
  const explainedShare = measured.isShown
    ? estimateOf(
        difference.value / measured.difference.value,
        pairs.map(([seen, model]) => model / seen),
      )
    : null;
  const result = {
    setUp: expected.setUp,
    expected_m: { ...difference },
    explainedShare,
    unexplained_m: unexplained,
  };
  const parts = expected.assumed === 0 ? restOfRoad : [...restOfRoad, ofModel];
  const rest = `${parts.slice(0, -1).join(', ')} or ${parts.at(-1) ?? ''}`;
  return { ...result, sentence: explanation(measured, result, rest, speaker(units)) };
}

function drawPairs(measured: Estimate, model: Estimate, seed: number): (readonly [number, number])[] {
  const measuredStream = randomStream(seed, 'explain/measured');
  const modelStream = randomStream(seed, 'explain/model');
  return Array.from(
    { length: draws },
    () => [drawn(measured, measuredStream.normal()), drawn(model, modelStream.normal())] as const,
  );
}

/** The two halves of a lopsided interval keep their own spreads. */
function drawn({ value, low, high }: Estimate, normal: number): number {
  return value + (normal < 0 ? value - low : high - value) * (normal / normalReach);
}

function estimateOf(value: number, values: readonly number[]): Estimate {
  const sorted = Float64Array.from(values).sort();
  return { value, low: sortedQuantile(sorted, 0.025), high: sortedQuantile(sorted, 0.975) };
}

function explanation(
  { difference }: LeadingDifference,
  result: Omit<Expectation, 'sentence'>,
  rest: string,
  say: Speaker,
): string {
  const { expected_m: expected, explainedShare, unexplained_m: unexplained } = result;
  const said = `The model expects of "${result.setUp}" a stop ${signedRange(expected, 'stopping-distance', say)}`;
  if (explainedShare === null) {
    return `${said}; the measured change can't be told from zero, so no share of it can be named.`;
  }
  const measured = signedRange(difference, 'stopping-distance', say);
  const left = unexplained.low > 0 || unexplained.high < 0;
  if (!left) return `${said}; measured is ${measured}: the two agree within what is known.`;
  const share = shareWords(explainedShare);
  return `${said}; measured is ${measured}: the brakes can explain ${share} of it. The rest (${signedRange(unexplained, 'stopping-distance', say)}) is ${rest}.`;
}

function shareWords({ low, high }: Estimate): string {
  const [least, most] = [Math.max(0, low), Math.max(0, high)].map((share) => Math.round(100 * share));
  if (most === 0) return 'none';
  return least === most ? `about ${least} %` : `${least} to ${most} %`;
}
