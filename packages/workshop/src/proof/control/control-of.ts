import { controlledDifference } from '@standstill/logs';
import type { ControlledDifference, ControlledSet, SetTooSmall } from '@standstill/logs';
import { plural } from '../../words/plural.ts';
import type { Speaker } from '../../words/speaker.ts';
import type { CompareRunsInput } from '../compare-runs.ts';
import type { Difference } from '../differences/difference.ts';
import { differencesOf } from '../differences/differences-of.ts';
import { isKnown } from '../differences/is-known.ts';
import type { RunSet } from '../sets/run-set.ts';
import { stopSetOf } from '../stop-set-of.ts';
import { placeBetween } from './place-between.ts';
import { referenceDifferences } from './reference-differences.ts';

/** A control that could be computed, or the reason why not. */
export interface FoundControl {
  /** Null where there is no control, or none that holds. */
  readonly controlled: ControlledDifference | null;
  /** What is left that nobody can tell from the change. */
  readonly left: readonly Difference[];
  readonly warnings: readonly string[];
}

interface ControlInput {
  readonly sets: Pick<CompareRunsInput, 'before' | 'after' | 'repeat' | 'reference'>;
  /** What differed between before and after. */
  readonly differences: readonly Difference[];
  readonly nominalSpeed: number;
  readonly definition: 'application' | 'gate';
  readonly sameLogger: boolean;
  readonly say: Speaker;
}

/**
 * The difference with what moved without the change taken out, by a repeat of the old set-up or else by a reference car:
 * whichever leaves less that can't be told from the change.
 *
 * @param input - the sets, what differed, nominal speed in m/s, definition, whether one logger measured all
 * @returns the controlled difference, what is left, and what a reader must know
 */
export function controlOf(input: ControlInput): FoundControl {
  const candidates = [...byRepeat(input), ...byReference(input)];
  const holding = candidates.filter(({ controlled }) => controlled !== null);
  const best = holding.toSorted((one, other) => one.left.length - other.left.length)[0];
  const troubles = candidates.flatMap((one) => (one === best ? [] : one.warnings));
  const other = holding.find((one) => one !== best);
  const aside = other === undefined ? [] : [asideWords(other.controlled)];
  if (best === undefined) return { controlled: null, left: input.differences, warnings: troubles };
  return { ...best, warnings: [...best.warnings, ...troubles, ...aside] };
}

function byRepeat({ sets, differences, say, ...options }: ControlInput): readonly FoundControl[] {
  const { before, after, repeat } = sets;
  if (repeat === undefined) return [];
  // What only a person says of before and after may well be true of the repeat and the new set-up, too.
  const given = differences.filter(
    ({ key, isGiven }) => isGiven === true && !(isKnown(repeat, key) && isKnown(after, key)),
  );
  const leftAt = (place: number): readonly Difference[] => {
    const old = [
      { set: before, weight: 1 - place },
      { set: repeat, weight: place },
    ];
    const found = differencesOf(old, after, say);
    return [...given.filter(({ key }) => found.every((one) => one.key !== key)), ...found];
  };
  const usual = placeBetween({ before, after, repeat });
  // Against the repeat alone, what the old set-up was not driven alike in before plays no part.
  const place = leftAt(usual).length > leftAt(1).length ? 1 : usual;
  const { nominalSpeed } = options;
  const found = controlledDifference(
    {
      before: stopSetOf(before, nominalSpeed),
      after: stopSetOf(after, nominalSpeed),
      repeat: stopSetOf(repeat, nominalSpeed),
    },
    { ...options, place },
  );
  if (!found.ok) return [tooFew(found, differences)];
  const alone =
    place === 1 && usual < 1
      ? ['The new set-up is held against the repeat alone, because only that was driven alike.']
      : [];
  return [{ controlled: found, left: leftAt(place), warnings: alone }];
}

function byReference({ sets, differences, say, ...options }: ControlInput): readonly FoundControl[] {
  const { before, after, reference } = sets;
  if (reference === undefined) return [];
  const { nominalSpeed } = options;
  const setFor = (set: RunSet): ReturnType<typeof stopSetOf> => stopSetOf(set, nominalSpeed);
  const found = controlledDifference(
    {
      before: setFor(before),
      after: setFor(after),
      referenceBefore: setFor(reference.before),
      referenceAfter: setFor(reference.after),
    },
    options,
  );
  if (!found.ok) return [tooFew(found, differences)];
  return [
    {
      controlled: found,
      left: referenceDifferences({ differences, before, after, reference, say }),
      warnings: [],
    },
  ];
}

const setNames: Readonly<Record<ControlledSet, string>> = {
  before: 'set before',
  after: 'set after',
  repeat: 'repeat of the old set-up',
  'reference-before': 'reference car before',
  'reference-after': 'reference car after',
};

function tooFew({ set, counted }: SetTooSmall<ControlledSet>, left: readonly Difference[]): FoundControl {
  const warning = `The ${setNames[set]} has ${plural(counted, 'stop')} that count${counted === 1 ? 's' : ''}, too few to control anything: it takes two, better as many as the other sets have.`;
  return { controlled: null, left, warnings: [warning] };
}

function asideWords(other: ControlledDifference | null): string {
  return other?.kind === 'repeat'
    ? 'The repeat of the old set-up is there too, but leaves more open than the reference car, and is not used.'
    : 'The reference car is there too, but leaves more open than the repeat of the old set-up, and is not used.';
}
