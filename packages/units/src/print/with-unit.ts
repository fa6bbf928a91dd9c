/**
 * Puts a unit behind a printed number: a space between, nothing at all for a plain number.
 *
 * @param number - the printed number
 * @param symbol - symbol of the unit
 * @returns the text
 * @example
 * withUnit('53', '%') // => '53 %'
 */
export function withUnit(number: string, symbol: string): string {
  return symbol === '1' ? number : `${number} ${symbol}`;
}
