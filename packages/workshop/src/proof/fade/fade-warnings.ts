import type { FadeOfStops } from '@standstill/logs';
import { mean } from '@standstill/numerics';
import { listOf } from '../../words/list-of.ts';
import { plural } from '../../words/plural.ts';
import type { Speaker } from '../../words/speaker.ts';
import type { Difference } from '../differences/difference.ts';

interface FadeWarningsInput {
  readonly first: FadeOfStops;
  readonly second: FadeOfStops | null;
  /** True where nobody stated the nominal speed. */
  readonly isGuessed: boolean;
  /** What differed between the two sets besides the set-up. */
  readonly differences: readonly Difference[];
}

/** Ratio of the longest rest to the shortest from which on the stops are no row of equal ones (common practice). */
const unequal = 2;

/** What a reader must know before believing a fade. */
export function fadeWarnings(input: FadeWarningsInput, say: Speaker): string[] {
  const { first, second, isGuessed, differences } = input;
  const sets = second === null ? [first] : [first, second];
  return [
    ...nextStop(sets),
    ...(isGuessed
      ? [
          `No nominal speed was given: distances are corrected to ${say.plain(first.nominalSpeed, 'speed')}, the round speed near the stops'.`,
        ]
      : []),
    ...sets.flatMap((set) => [
      ...leftOut(set),
      ...withoutGate(set),
      ...rests(set, say),
      ...bend(set),
      ...tooHot(set, say),
    ]),
    ...(second === null ? [] : schedules(first, second, say)),
    ...differences.map(({ text }) => `Different between the two sets, besides the set-up: ${text}.`),
    ...causes(sets),
  ];
}

function leftOut({ name, stops }: FadeOfStops): string[] {
  const out = stops.filter(({ counted }) => !counted);
  const [first] = out;
  if (first === undefined) return [];
  return [
    `${plural(out.length, 'stop')} of "${name}" left out; the first: stop ${first.number}, ${first.reason ?? ''} It warmed the brakes all the same and keeps its number.`,
  ];
}

function withoutGate({ name, stops }: FadeOfStops): string[] {
  const numbers = stops.flatMap(({ distance, number }) => (distance === null ? [String(number)] : []));
  if (numbers.length === 0) return [];
  return [`Without a distance from the speed gate in "${name}", and so not listed: stop ${listOf(numbers)}.`];
}

function rests({ name, stops }: FadeOfStops, say: Speaker): string[] {
  const rested = stops.flatMap(({ restedFor }) => restedFor ?? []);
  const [least, most] = [Math.min(...rested), Math.max(...rested)];
  if (rested.length < 2 || most < unequal * least) return [];
  return [
    `The rests between the stops of "${name}" go from ${say.plain(least, 'time')} to ${say.plain(most, 'time')}: the brakes cooled unalike, and a line over the stops is only a rough picture.`,
  ];
}

function bend({ name, bends }: FadeOfStops): string[] {
  if (!bends) return [];
  return [`The distances of "${name}" do not follow a line: look at the stops, and not at the slope alone.`];
}

function schedules(first: FadeOfStops, second: FadeOfStops, say: Speaker): string[] {
  const [one, other] = [first, second].map(({ stops }) => ({
    count: stops.length,
    rest: mean(stops.flatMap(({ restedFor }) => restedFor ?? [])),
  }));
  if (one === undefined || other === undefined) return [];
  const isRestAlike = !(Math.abs(one.rest - other.rest) > 0.2 * Math.max(one.rest, other.rest));
  if (one.count === other.count && isRestAlike) return [];
  const words = [one, other].map(({ count, rest }) =>
    Number.isFinite(rest)
      ? `${plural(count, 'stop')}, ${say.plain(rest, 'time')} apart`
      : plural(count, 'stop'),
  );
  return [`The two sets were not driven by one schedule (${words.join('; ')}): the slopes tell that, too.`];
}

/** What the reader does next is the next stop, and it will be the worst one so far. */
function nextStop(sets: readonly FadeOfStops[]): string[] {
  return [
    sets.some(({ slope }) => slope.low > 0)
      ? 'Where stops get longer, the next one is likely the longest yet: drive the brakes cool, then look at pads, fluid and rotors before driving hard.'
      : 'Stops without a sure fade say nothing of more of them, of hotter ones or of a long descent.',
  ];
}

/** °C above which a reading is doubted: rotors are iron or steel and would not last there. Common practice. */
const hottestRotor = 1000;

function tooHot({ name, temperatures }: FadeOfStops, say: Speaker): string[] {
  return temperatures
    .filter(({ highest }) => highest > hottestRotor)
    .map(
      ({ channel, highest }) =>
        `"${channel}" of "${name}" reads ${say.plain(highest, 'temperature')}, hotter than a rotor lasts: check its unit and its sensor before believing any temperature here.`,
    );
}

/** A slope over the stops is not yet a fade of the brakes. */
function causes(sets: readonly FadeOfStops[]): string[] {
  const sure = sets.filter(({ slope }) => slope.low > 0);
  if (sure.length === 0) return [];
  const isRecorded = sure.every(({ temperatures }) => temperatures.length > 0);
  return [
    isRecorded
      ? 'Tires and driver tire with the brakes: that distance and temperature rise together does not yet make the one the cause of the other.'
      : 'No brake temperature was recorded: what gets longer with the stops may be the tires or the driver as well as the brakes.',
  ];
}
