import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** A file as the reader wants it, piece by piece; `close` when done. */
export function fileSource(file) {
  const descriptor = openSync(file);
  let buffer = new Uint8Array(0);
  return {
    size: fstatSync(descriptor).size,
    read: (offset, length) => {
      if (buffer.length < length) buffer = new Uint8Array(length);
      return buffer.subarray(0, readSync(descriptor, buffer, 0, length, offset));
    },
    close: () => closeSync(descriptor),
  };
}
