import { idText } from './frame.ts';

/** Identifiers that a sentence names at most. */
const shown = 16;

/**
 * The identifiers of a log for a sentence, those seen most often first.
 *
 * @param seen - how often each was seen
 */
export function seenIdentifiers(seen: ReadonlyMap<number, number>): string {
  const ids = [...seen].sort(([a, times], [b, others]) => others - times || a - b).map(([id]) => idText(id));
  const more = ids.length - shown;
  return ids.slice(0, shown).join(', ') + (more > 0 ? ` and ${more} more` : '');
}
