import type { ByteSource } from '../../channels/byte-source.ts';

/** Bytes; a log in a format that is not read in pieces may be this long. */
export const longestWhole = 256 * 2 ** 20;

const pieceLength = 1 << 22;

/**
 * A whole log in one array, for formats that are not read in pieces.
 *
 * @param source - the log
 * @returns its bytes; null where a source that is not in memory yet is longer than 256 MB
 */
export function wholeBytes(source: Uint8Array | ByteSource): Uint8Array | null {
  if (source instanceof Uint8Array) return source;
  if (source.size > longestWhole) return null;
  const bytes = new Uint8Array(source.size);
  let at = 0;
  while (at < bytes.length) {
    const piece = source.read(at, Math.min(pieceLength, bytes.length - at));
    if (piece.length === 0) return bytes.subarray(0, at);
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
}
