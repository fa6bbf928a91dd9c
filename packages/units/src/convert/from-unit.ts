import type { Dimension } from '../dimension/dimension.ts';
import { unitBySymbol } from './unit-by-symbol.ts';

/**
 * What a number in a unit is in SI (°C for temperatures).
 *
 * Equation: SI value = (number - zero) × times / over
 *
 * @param number - the number, in `unit`
 * @param unit - symbol or spelling of the unit
 * @param dimension - what is measured
 * @returns value, SI unit of the dimension; NaN stays NaN
 * @throws UnknownUnitError where the dimension has no such unit
 * @example
 * fromUnit(145, 'psi', 'pressure') // => 999740
 */
export function fromUnit(number: number, unit: string, dimension: Dimension): number {
  const { zero, times, over } = unitBySymbol(unit, dimension);
  return ((number - zero) * times) / over;
}
