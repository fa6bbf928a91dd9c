import type { TextEncoding } from './text-encoding.ts';

const chunkLength = 1 << 20;

/**
 * The text of a log in pieces of about a megabyte, so that a large file is never one string. A byte order mark is
 * taken off.
 *
 * @param bytes - the whole file
 * @param encoding - its encoding
 * @returns the pieces in order; a character is never torn between two
 */
export function* textChunks(bytes: Uint8Array, encoding: TextEncoding): Generator<string> {
  const decoder = new TextDecoder(encoding);
  for (let start = 0; start < bytes.length; start += chunkLength) {
    const text = decoder.decode(bytes.subarray(start, start + chunkLength), { stream: true });
    if (text !== '') yield text;
  }
  const rest = decoder.decode();
  if (rest !== '') yield rest;
}
