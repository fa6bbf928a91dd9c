/**
 * The last decimal place that an uncertainty lets a number show.
 *
 * Equation: place of the first digit of the half-width; one further where that digit is 1
 * Assumes: common practice: an uncertainty is worth one digit, two where the first is a 1.
 *
 * @param halfWidth - half of the interval, above 0, in the unit of print
 * @returns power of ten of the last place: 1 for tens, 0 for ones, -1 for tenths
 * @example
 * lastPlace(3.2) // => 0
 */
export function lastPlace(halfWidth: number): number {
  const [digits = '1', exponent = '0'] = halfWidth.toExponential(1).split('e');
  return Number(exponent) - (digits.startsWith('1') ? 1 : 0);
}
