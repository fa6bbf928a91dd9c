import { unitBySymbol } from '../convert/unit-by-symbol.ts';
import type { Dimension } from '../dimension/dimension.ts';
import { lastPlace } from './last-place.ts';
import { printNumber } from './print-number.ts';
import { withUnit } from './with-unit.ts';

export interface PrintOptions {
  /** Half-width of the value's interval, SI (K for a temperature): the print shows no digit that it does not support. */
  readonly interval?: number | undefined;
  /** Most digits, 1 to 17; 4 where neither this nor an interval is given. Zeros at the end are dropped. */
  readonly significantDigits?: number | undefined;
}

/**
 * Prints a quantity for a person, with its unit and no more digits than are known.
 *
 * Equation: number = SI value × over / times + zero, rounded to the last place that interval and digits both allow
 *
 * @param value - SI value (°C for temperatures); NaN prints as '–'
 * @param unit - symbol of the unit to print in
 * @param dimension - what is measured
 * @param options - half-width of the interval, most digits
 * @returns for example '118 ft', '53 %'
 * @throws UnknownUnitError where the dimension has no such unit
 * @example
 * formatQuantity(36.123, 'ft', 'length', { interval: 0.9 }) // => '119 ft'
 */
export function formatQuantity(
  value: number,
  unit: string,
  dimension: Dimension,
  options: PrintOptions = {},
): string {
  const { symbol, times, over, zero } = unitBySymbol(unit, dimension);
  const number = (value * over) / times + zero;
  const halfWidth = Math.abs(((options.interval ?? 0) * over) / times);
  const known = halfWidth > 0 && Number.isFinite(halfWidth);
  const asked = options.significantDigits ?? (known ? 17 : 4);
  const place = placeOfDigit(number, asked);
  if (known && lastPlace(halfWidth) >= place)
    return withUnit(printNumber(number, lastPlace(halfWidth)), symbol);
  return withUnit(withoutEndZeros(printNumber(number, place)), symbol);
}

/** Power of ten of the n-th digit of a number. */
function placeOfDigit(number: number, digits: number): number {
  if (number === 0 || !Number.isFinite(number)) return 0;
  return Number(number.toExponential(Math.min(digits - 1, 16)).split('e')[1]) - digits + 1;
}

/** '14.00' becomes '14', '1.50e-7' becomes '1.5e-7'; '1300' stays. */
function withoutEndZeros(text: string): string {
  return text.replace(/(\.\d*?)0+(?=e|$)/u, '$1').replace(/\.(?=e|$)/u, '');
}
