import { listOf } from '../words/list-of.ts';
import type { Difference, DifferenceKey } from './differences/difference.ts';

const recorded = 'the sets were recorded in different ways';

/** How each kind of known difference is called inside a sentence; the recording by one clause, however much differs in it. */
const says: Readonly<Record<DifferenceKey, string>> = {
  tires: 'the tires were changed',
  surface: 'the surface was different',
  date: 'the day was different',
  driver: 'the driver was another',
  direction: 'the directions were different',
  headWind: 'the wind was different',
  surfaceTemperature: "the road's temperature was different",
  tireTemperature: "the tires' temperature was different",
  airTemperature: "the air's temperature was different",
  startTemperature: 'the rotors started at another temperature',
  stated: 'something else differed',
  logger: recorded,
  'start-signal': recorded,
  'sample-rate': recorded,
};

/**
 * What was different besides the set-up, as a clause: `the tires were changed and the day was different too`.
 *
 * @param differences - known differences
 * @returns the clause; null where nothing is known to have differed
 */
export function changedToo(differences: readonly Difference[]): string | null {
  const keys = new Set(differences.map(({ key }) => key));
  const told = (Object.keys(says) as DifferenceKey[]).filter((key) => keys.has(key));
  const clauses = [...new Set(told.map((key) => says[key]))];
  return clauses.length === 0 ? null : `${listOf(clauses)} too`;
}
