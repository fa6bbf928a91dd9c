import type { Reconciliation } from '../../results/reconciliation.ts';
import type { Explained } from '../explained.ts';
import { tiresChanged } from './tires-changed.ts';

type Group = Reconciliation['notToldApart'][number];

/**
 * Tires and brakes that were changed between the same two sets: stops alone can't part them.
 *
 * @param about - what the sentences are about
 * @returns one group; none where the tires stayed, or nothing was driven after
 */
export function tiresAndBrakes(about: Explained): Group[] {
  const { compared, brakesAlone, before, after } = about;
  const sameBrakes = after !== null && sameParts(brakesAlone, before);
  if (compared === null || sameBrakes || !tiresChanged(about)) return [];
  return [
    {
      titles: ['the new tires', 'the new brakes'],
      correlation: 1,
      sentence:
        'Tires and brakes were changed between the same two sets of stops: the stops by themselves can not part their effects; what is given to the brakes here is what the model expects of them.',
      toTellApart:
        'To tell them apart, drive the old brakes on the new tires, or the new brakes on the old tires, on one day.',
    },
  ];
}

function sameParts(one: Explained['before'] | null, other: Explained['before']): boolean {
  return one !== null && JSON.stringify(one.slots) === JSON.stringify(other.slots);
}
