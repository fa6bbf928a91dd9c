/** Up to 15 digits over an exact power of ten round correctly in one division, see `numberField`. */
const mostDigits = 15;

/**
 * The digits of a decimal as one whole number.
 *
 * @param bytes - where they stand
 * @param from - index of the first digit or mark
 * @param to - index behind the last one
 * @returns the number without its mark, exact; NaN for more than 15 digits
 */
export function longMantissa(bytes: Uint8Array, from: number, to: number): number {
  let mantissa = 0;
  let digits = 0;
  for (let at = from; at < to; at += 1) {
    const digit = bytes[at]! ^ 48;
    if (digit > 9) continue;
    mantissa = mantissa * 10 + digit;
    digits += 1;
  }
  return digits > mostDigits ? NaN : mantissa;
}
