import type { ByteSource } from '../../channels/byte-source.ts';

/** The first bytes of a file, to keep: a copy where the source may overwrite what it gave. */
export function firstBytes(source: Uint8Array | ByteSource, length: number): Uint8Array {
  if (source instanceof Uint8Array) return source.subarray(0, length);
  return source.read(0, Math.min(length, source.size)).slice();
}
