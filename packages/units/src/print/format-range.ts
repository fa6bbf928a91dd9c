import { toUnit } from '../convert/to-unit.ts';
import { unitBySymbol } from '../convert/unit-by-symbol.ts';
import type { Dimension } from '../dimension/dimension.ts';
import { lastPlace } from './last-place.ts';
import { printNumber } from './print-number.ts';
import { withUnit } from './with-unit.ts';

/** The two ends of an interval, SI (°C for temperatures), low first. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/**
 * Prints an interval for a person: '3 to 9 ft'.
 *
 * Equation: both ends rounded to the last place that half of their distance supports
 *
 * @param range - low and high end, SI (°C for temperatures)
 * @param unit - symbol of the unit to print in
 * @param dimension - what is measured
 * @returns the text; '3 ft' where both ends print alike
 * @throws UnknownUnitError where the dimension has no such unit
 * @example
 * formatRange({ low: 0.95, high: 2.8 }, 'ft', 'length') // => '3 to 9 ft'
 */
export function formatRange(range: Range, unit: string, dimension: Dimension): string {
  const { symbol } = unitBySymbol(unit, dimension);
  const low = toUnit(range.low, unit, dimension);
  const high = toUnit(range.high, unit, dimension);
  const halfWidth = Math.abs(high - low) / 2;
  const place = halfWidth > 0 && Number.isFinite(halfWidth) ? lastPlace(halfWidth) : placeForEqual(low);
  const texts = [printNumber(low, place), printNumber(high, place)] as const;
  return withUnit(texts[0] === texts[1] ? texts[0] : texts.join(' to '), symbol);
}

/** Four digits where there is no width to go by. */
function placeForEqual(number: number): number {
  return number === 0 || !Number.isFinite(number) ? 0 : Math.floor(Math.log10(Math.abs(number))) - 3;
}
