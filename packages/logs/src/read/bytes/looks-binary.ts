const sampleLength = 1 << 16;

/**
 * Whether bytes are no text: more than one in twenty of the first 64 kB are control characters that no text uses.
 * (In random bytes it is one in ten.)
 */
export function looksBinary(bytes: Uint8Array): boolean {
  const length = Math.min(bytes.length, sampleLength);
  let odd = 0;
  for (let i = 0; i < length; i += 1) {
    const byte = bytes[i]!;
    if (byte === 0x7f || (byte < 0x20 && byte !== 9 && byte !== 10 && byte !== 13)) odd += 1;
  }
  return odd > length / 20;
}
