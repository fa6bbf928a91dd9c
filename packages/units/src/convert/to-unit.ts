import type { Dimension } from '../dimension/dimension.ts';
import { unitBySymbol } from './unit-by-symbol.ts';

/**
 * What an SI value (°C for temperatures) is in a unit.
 *
 * Equation: number = SI value × over / times + zero
 *
 * @param value - the quantity, SI unit of the dimension
 * @param unit - symbol or spelling of the unit
 * @param dimension - what is measured
 * @returns the number, in `unit`; NaN stays NaN
 * @throws UnknownUnitError where the dimension has no such unit
 * @example
 * toUnit(26.8224, 'mph', 'speed') // => 60
 */
export function toUnit(value: number, unit: string, dimension: Dimension): number {
  const { zero, times, over } = unitBySymbol(unit, dimension);
  return (value * over) / times + zero;
}
