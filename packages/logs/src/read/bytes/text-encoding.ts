export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

const sampleLength = 1 << 20;

/**
 * Which encoding the text of a log is in: by its byte order mark, else UTF-8 where the first megabyte is valid UTF-8,
 * else the Western one-byte encoding.
 *
 * @param bytes - the whole file
 * @returns the encoding's label
 */
export function textEncoding(bytes: Uint8Array): TextEncoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, sampleLength), { stream: true });
    return 'utf-8';
  } catch {
    return 'windows-1252';
  }
}
