import type { ByteSource } from '../../channels/byte-source.ts';
import { sizeOf } from './size-of.ts';
import type { TextEncoding } from './text-encoding.ts';

/** Bytes read at once. */
const usualPiece = 1 << 20;

/** Takes a piece of a file and says how many bytes of it were used up; the rest comes again before the next ones. */
export type TakePiece = (bytes: Uint8Array, isLast: boolean) => number;

/**
 * Feeds a file to a reader, as UTF-8 or as one byte a character, without its byte order mark: at once where it is in
 * memory, else in pieces through one buffer.
 *
 * @param source - the file
 * @param encoding - of the file; UTF-16 is turned into UTF-8 on the way
 * @param take - the reader; what it leaves of a piece is kept for the next
 * @param pieceLength - bytes read at once
 */
export function feedBytes(
  source: Uint8Array | ByteSource,
  encoding: TextEncoding,
  take: TakePiece,
  pieceLength = usualPiece,
): void {
  const isWide = encoding.startsWith('utf-16');
  if (source instanceof Uint8Array && !isWide) {
    take(source.subarray(markLength(source)), true);
    return;
  }
  const size = sizeOf(source);
  const toNarrow = isWide ? narrower(encoding) : null;
  let buffer = new Uint8Array(2 * pieceLength);
  let held = buffer.subarray(0, 0);
  for (let offset = 0; offset < size;) {
    const raw = readAt(source, offset, pieceLength);
    if (raw.length === 0) break;
    const isFirst = offset === 0;
    offset += raw.length;
    const piece =
      toNarrow === null ? raw.subarray(isFirst ? markLength(raw) : 0) : toNarrow(raw, offset >= size);
    const length = held.length + piece.length;
    if (length > buffer.length) buffer = moved(held, new Uint8Array(2 * length));
    buffer.set(piece, held.length);
    const used = take(buffer.subarray(0, length), offset >= size);
    held = buffer.subarray(0, length - used);
    held.set(buffer.subarray(used, length));
  }
}

function moved(held: Uint8Array, buffer: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  buffer.set(held);
  return buffer;
}

function readAt(source: Uint8Array | ByteSource, offset: number, length: number): Uint8Array {
  if (source instanceof Uint8Array) return source.subarray(offset, offset + length);
  return source.read(offset, Math.min(length, source.size - offset));
}

function narrower(encoding: TextEncoding): (bytes: Uint8Array, isLast: boolean) => Uint8Array {
  const decoder = new TextDecoder(encoding);
  const encoder = new TextEncoder();
  return (bytes, isLast) => encoder.encode(decoder.decode(bytes, { stream: !isLast }));
}

function markLength(bytes: Uint8Array): number {
  return bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
}
