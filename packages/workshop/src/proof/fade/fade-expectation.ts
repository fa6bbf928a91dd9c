import type { FadeOfStops } from '@standstill/logs';
import type { FadeReport } from '../../results/fade-report.ts';
import { signedRange } from '../../words/signed-range.ts';
import type { Speaker } from '../../words/speaker.ts';
import type { ExpectedFade } from './expected-fade.ts';

/** What the model expects of the same stops, set against what was measured. */
export function fadeExpectation(
  { growth }: FadeOfStops,
  { setUp, growth: expected, temperatures }: ExpectedFade,
  say: Speaker,
): NonNullable<FadeReport['expectation']> {
  const measured = signedRange(growth, 'stopping-distance', say);
  const modeled = signedRange(expected, 'stopping-distance', say);
  const overlap = expected.low <= growth.high && growth.low <= expected.high;
  const verdict = overlap
    ? 'the two agree within what is known'
    : growth.value > expected.value
      ? 'the car fades more than the model has it'
      : 'the car fades less than the model has it';
  const hottest = say.plain(Math.max(...temperatures), 'temperature');
  return {
    setUp,
    growth_m: { ...expected },
    temperatures_C: [...temperatures],
    sentence: `The model expects of "${setUp}" a last stop ${modeled} than the first, with the hottest rotor at ${hottest} at the start of a stop; measured is ${measured}: ${verdict}.`,
  };
}
