import { formatQuantity, fromUnit, toUnit } from '@standstill/units';
import type { Dimension } from '@standstill/units';

const digits = 3;

/** What a rounding of the last bit may move a bound: it is no reason to go to the next number. */
const hair = 1e-9;

/**
 * A bound in three digits that is itself accepted: the least one is rounded up, the greatest one down.
 *
 * @param value - the bound, SI unit of the dimension
 * @param unit - to print it in
 * @param dimension - of the quantity
 * @param end - which end of the range it is
 * @returns the number with its unit
 */
export function printBound(value: number, unit: string, dimension: Dimension, end: 'low' | 'high'): string {
  const inUnit = toUnit(value, unit, dimension);
  const rounded = inward(inUnit, end);
  return formatQuantity(fromUnit(rounded, unit, dimension), unit, dimension, { significantDigits: digits });
}

function inward(value: number, end: 'low' | 'high'): number {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1);
  const steps = value / step;
  const whole = Math.round(steps);
  if (Math.abs(steps - whole) <= hair * Math.abs(steps)) return Number((whole * step).toPrecision(digits));
  return Number(((end === 'low' ? Math.ceil(steps) : Math.floor(steps)) * step).toPrecision(digits));
}
