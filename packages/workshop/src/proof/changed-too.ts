import { listOf } from '../words/list-of.ts';
import type { Difference, DifferenceKey } from './differences/difference.ts';

/** How each kind of known difference is called inside a sentence; what tells of the recording has a line of its own. */
const says: Readonly<Record<DifferenceKey, string | null>> = {
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
  logger: null,
  'start-signal': null,
  'sample-rate': null,
};

/**
 * What was different besides the set-up, as a clause: `the tires were changed and the day was different too`.
 *
 * @param differences - known differences
 * @returns the clause; null where nothing is known to have differed but the recording
 */
export function changedToo(differences: readonly Difference[]): string | null {
  const keys = new Set(differences.map(({ key }) => key));
  const clauses = (Object.keys(says) as DifferenceKey[]).flatMap((key) =>
    keys.has(key) ? (says[key] ?? []) : [],
  );
  return clauses.length === 0 ? null : `${listOf(clauses)} too`;
}
