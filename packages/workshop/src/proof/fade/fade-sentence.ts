import type { FadeOfStops, IntervalValue } from '@standstill/logs';
import { signedRange } from '../../words/signed-range.ts';
import type { Speaker } from '../../words/speaker.ts';

interface ToldFade {
  readonly first: FadeOfStops;
  readonly second: FadeOfStops | null;
  /** m per stop, second minus first. */
  readonly apart: IntervalValue | null;
}

/**
 * How the stops go, in one sentence that can be repeated.
 *
 * @param fade - of one set, or of two with the difference of their slopes, m per stop
 * @param say - printer of the unit system
 * @returns the sentence
 */
export function fadeSentence({ first, second, apart }: ToldFade, say: Speaker): string {
  const own = clause(first, say);
  const speed = say.plain(first.nominalSpeed, 'speed');
  if (second === null || apart === null) return `From ${speed}, ${own}${temperatureClause(first, say)}.`;
  return `From ${speed}, in "${first.name}" ${own}; in "${second.name}" ${clause(second, say)}: ${apartClause(apart, say)}.`;
}

function clause({ slope, growth, counted }: FadeOfStops, say: Speaker): string {
  const change = signedRange(growth, 'stopping-distance', say);
  const over = `over ${counted} stops the last is ${change} than the first`;
  if (slope.low <= 0 && slope.high >= 0) return `no sure fade shows: ${over}`;
  return slope.value > 0 ? `the stops get longer: ${over}` : `the stops get shorter: ${over}`;
}

/** The hottest channel tells how hard the brakes were worked. */
function temperatureClause({ temperatures }: FadeOfStops, say: Speaker): string {
  const [hottest] = temperatures.toSorted((one, other) => other.highest - one.highest);
  if (hottest === undefined) return ', and no temperature was recorded beside them';
  const { channel, first, highest } = hottest;
  return `, with "${channel}" going from ${say.plain(first, 'temperature')} to ${say.plain(highest, 'temperature')} at the start of a stop`;
}

function apartClause(apart: IntervalValue, say: Speaker): string {
  const size = signedRange(apart, 'stopping-distance', say);
  const isSure = apart.low > 0 || apart.high < 0;
  if (!isSure) return `the two can't be told apart (${size} a stop)`;
  return `the second adds ${signedRange(apart, 'stopping-distance', say).replace(/ (?:shorter|longer)$/, '')} ${apart.value < 0 ? 'less' : 'more'} with each stop`;
}
