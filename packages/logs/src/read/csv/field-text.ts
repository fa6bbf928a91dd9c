/** Bytes; short fields are put together sign by sign, which is faster than a decoder. */
const shortField = 40;

/**
 * Reads fields of a file as text.
 *
 * @param encoding - of the bytes
 * @returns takes bytes, the first index and the one behind the last
 */
export function fieldText(encoding: string): (bytes: Uint8Array, from: number, to: number) => string {
  const decoder = new TextDecoder(encoding);
  return (bytes, from, to) => {
    let text = '';
    if (to - from <= shortField)
      for (let at = from; at < to; at += 1) {
        const byte = bytes[at]!;
        if (byte > 127) return decoder.decode(bytes.subarray(from, to));
        text += String.fromCharCode(byte);
      }
    else text = decoder.decode(bytes.subarray(from, to));
    return text;
  };
}
