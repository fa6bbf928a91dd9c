import type { Speaker } from '../../words/speaker.ts';
import type { Difference, DifferenceKey } from '../differences/difference.ts';
import { isKnown } from '../differences/is-known.ts';
import { differencesOf } from '../differences/differences-of.ts';
import type { RunSet } from '../sets/run-set.ts';

/** What moves both cars alike, so that a reference car takes it out; tires and rotors are each car's own. */
const shared: ReadonlySet<DifferenceKey> = new Set([
  'date',
  'surface',
  'driver',
  'direction',
  'headWind',
  'surfaceTemperature',
  'airTemperature',
]);

interface ReferenceInput {
  readonly differences: readonly Difference[];
  readonly before: RunSet;
  readonly after: RunSet;
  readonly reference: { readonly before: RunSet; readonly after: RunSet };
  readonly say: Speaker;
}

/**
 * What a reference car does not take out: what is each car's own, what the reference was not driven alike in, and what
 * nobody wrote down of it.
 *
 * @param input - what differed between the sets; both sets and the reference car's two
 * @returns what is left
 */
export function referenceDifferences(input: ReferenceInput): readonly Difference[] {
  const { differences, before, after, reference, say } = input;
  const apart = new Set(
    [
      ...differencesOf([{ set: before, weight: 1 }], reference.before, say),
      ...differencesOf([{ set: after, weight: 1 }], reference.after, say),
    ].map(({ key }) => key),
  );
  const sets = [before, after, reference.before, reference.after];
  return differences.filter(
    ({ key }) => !shared.has(key) || apart.has(key) || !sets.every((set) => isKnown(set, key)),
  );
}
