/** What came of looking at one sentence. */
export type CheckedSentence =
  | { readonly kind: 'sentence'; readonly text: string }
  | { readonly kind: 'bad-checksum' | 'no-checksum' | 'not-ascii' };

const printable = /^[\x20-\x7e]*$/;
const ending = /\*([0-9A-Fa-f]{2})$/;

/**
 * Verifies a sentence's checksum: the exclusive or of all characters between '$' and '*', in hexadecimal of either case.
 *
 * @param piece - what stands from one '$' to the next or to the end of the line
 * @returns the sentence, or what is wrong with it
 */
export function checkSentence(piece: string): CheckedSentence {
  const text = piece.trimEnd();
  if (!printable.test(text)) return { kind: 'not-ascii' };
  const stated = ending.exec(text);
  if (stated === null) return { kind: text.includes('*') ? 'bad-checksum' : 'no-checksum' };
  let sum = 0;
  for (let i = 1; i < stated.index; i += 1) sum ^= text.charCodeAt(i);
  return sum === parseInt(stated[1]!, 16) ? { kind: 'sentence', text } : { kind: 'bad-checksum' };
}
