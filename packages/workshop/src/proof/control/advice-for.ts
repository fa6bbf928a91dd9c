import { listOf } from '../../words/list-of.ts';
import type { Difference, DifferenceKey } from '../differences/difference.ts';

/** What the old set-up is to be driven with once more, by what differed. */
const likewise: Partial<Record<DifferenceKey, string>> = {
  date: 'day',
  surface: 'day',
  surfaceTemperature: 'day',
  airTemperature: 'day',
  headWind: 'day',
  tires: 'tires',
  tireTemperature: 'tire temperature',
  driver: 'driver',
  direction: 'directions',
  startTemperature: 'rotor temperature at the start',
  stated: 'conditions',
};

/** What a car beside it goes through as well. */
const ofTheDay: ReadonlySet<DifferenceKey> = new Set([
  'date',
  'surface',
  'surfaceTemperature',
  'airTemperature',
  'headWind',
]);

const ofTheRecording: ReadonlySet<DifferenceKey> = new Set(['logger', 'start-signal', 'sample-rate']);

/**
 * What to drive so that the change can be told from what else differed: one sentence for each way.
 *
 * @param left - what nobody can tell from the change
 * @param isRepeated - whether a repeat of the old set-up is there, which did not settle it
 * @returns the advice; none where nothing is left
 */
export function adviceFor(left: readonly Difference[], isRepeated: boolean): readonly string[] {
  const keys = left.map(({ key }) => key);
  const things = [...new Set(keys.flatMap((key) => likewise[key] ?? []))];
  return [...repeat(things, isRepeated), ...reference(keys), ...recording(keys)];
}

function repeat(things: readonly string[], isRepeated: boolean): readonly string[] {
  if (things.length === 0) return [];
  const same = listOf(things.toSorted((one, other) => Number(other === 'day') - Number(one === 'day')));
  return [
    isRepeated
      ? `Repeat the old set-up as the new one was driven (same ${same}): the repeat that is there was not driven so.`
      : `Drive the old set-up once more as the new one was driven (same ${same}): old, new, old tells the change from the rest.`,
  ];
}

function reference(keys: readonly DifferenceKey[]): readonly string[] {
  if (!keys.some((key) => ofTheDay.has(key))) return [];
  const own = keys.some((key) => key === 'tires' || key === 'tireTemperature');
  const only = own ? '; it tells the day from the change, not the tires' : '';
  return [
    `Or, next time, drive a second car that nobody changes beside this one, before and after: what moves with it is not the change${only}.`,
  ];
}

function recording(keys: readonly DifferenceKey[]): readonly string[] {
  return keys.some((key) => ofTheRecording.has(key))
    ? ['Measure both sets with one logger, one rate and one signal for the start of the brake.']
    : [];
}
