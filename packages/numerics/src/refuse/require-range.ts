import { OutOfRangeError } from './out-of-range-error.ts';

/**
 * Lets a number through only inside a closed range; NaN never passes.
 *
 * @param quantity - what the number is, in words for a person
 * @param value - the number, in `unit`
 * @param unit - SI unit symbol; '' where the number has none
 * @param low - least accepted value, in `unit`
 * @param high - greatest accepted value, in `unit`
 * @returns the value, in `unit`
 * @throws OutOfRangeError outside the range
 * @example
 * requireRange('wheelbase', 2.4, 'm', 0.5, 10) // => 2.4
 */
export function requireRange(
  quantity: string,
  value: number,
  unit: string,
  low: number,
  high: number,
): number {
  if (value >= low && value <= high) return value;
  throw new OutOfRangeError(quantity, value, unit, low, high);
}
