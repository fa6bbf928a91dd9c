import { listOf } from '../words/list-of.ts';

/** How each kind of known difference is called inside a sentence, by how its text begins. */
const kinds = [
  { begins: /^tires\b/i, says: 'the tires were changed' },
  { begins: /^surface\b/i, says: 'the surface was different' },
  { begins: /^(?:date|different days)\b/i, says: 'the day was different' },
] as const;

/** What tells of the recording, and not of the car or the day: it widens intervals and has a line of its own. */
const ofRecording = /^(?:the start of a stop|the logs seem|speed was sampled)/;

/**
 * What was different besides the set-up, as a clause: `the tires were changed and the day was different too`.
 *
 * @param confounders - known differences, each as a text that begins with its kind
 * @returns the clause; null where nothing is known to have differed
 * @example
 * changedToo(['tires: old before, new after']) // => 'the tires were changed too'
 */
export function changedToo(confounders: readonly string[]): string | null {
  const named = kinds.filter(({ begins }) => confounders.some((text) => begins.test(text)));
  const other = confounders.some(
    (text) => !ofRecording.test(text) && !kinds.some(({ begins }) => begins.test(text)),
  );
  const clauses = [...named.map(({ says }) => says), ...(other ? ['something else differed'] : [])];
  return clauses.length === 0 ? null : `${listOf(clauses)} too`;
}
