/**
 * The bytes that a text of hexadecimal pairs stands for.
 *
 * @param text - pairs of digits, with blanks or points between the pairs or nothing
 * @returns the bytes; null where the text is anything else
 */
export function hexBytes(text: string): Uint8Array | null {
  const bytes = new Uint8Array(text.length >> 1);
  let count = 0;
  let at = 0;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 32 || code === 46) {
      at += 1;
      continue;
    }
    const high = digit(code);
    const low = at + 1 < text.length ? digit(text.charCodeAt(at + 1)) : -1;
    if (high < 0 || low < 0) return null;
    bytes[count] = high * 16 + low;
    count += 1;
    at += 2;
  }
  return bytes.subarray(0, count);
}

function digit(code: number): number {
  if (code >= 48 && code <= 57) return code - 48;
  if (code >= 65 && code <= 70) return code - 55;
  return code >= 97 && code <= 102 ? code - 87 : -1;
}
