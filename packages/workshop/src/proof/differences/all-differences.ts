import type { UnitSystem } from '@standstill/units';
import { speaker } from '../../words/speaker.ts';
import type { RunSet } from '../sets/run-set.ts';
import type { Difference, DifferenceKey } from './difference.ts';
import { differencesOf } from './differences-of.ts';
import { givenDifferences } from './given-differences.ts';

interface DifferencesInput {
  readonly before: RunSet;
  readonly after: RunSet;
  /** What a person says was different, each as a text that begins with its kind. */
  readonly confounders?: readonly string[];
  readonly units?: UnitSystem;
}

/** All that was different besides the set-up: as a person says first, then as the runs and the logs tell. */
export function allDifferences(input: DifferencesInput): readonly Difference[] {
  const { before, after, confounders = [], units = 'us' } = input;
  const given = givenDifferences(confounders);
  const told = new Set<DifferenceKey>(given.flatMap(({ key }) => (key === 'stated' ? [] : [key])));
  const found = differencesOf([{ set: before, weight: 1 }], after, speaker(units));
  return [...given, ...found.filter(({ key }) => !told.has(key))];
}

/**
 * What was different between two sets besides the set-up, in words: what nobody can tell from the change.
 *
 * @param input - both sets with the runs of their logs; what a person says; units of the texts
 * @returns one text for each difference, each begins with its kind
 */
export function confoundersOf(input: DifferencesInput): readonly string[] {
  return allDifferences(input).map(({ text }) => text);
}
