import type { ByteSource } from '../../channels/byte-source.ts';

/** Number of bytes of a log, wherever it lies. */
export function sizeOf(source: Uint8Array | ByteSource): number {
  return source instanceof Uint8Array ? source.length : source.size;
}
