import type { Dimension } from '../dimension/dimension.ts';
import { unitTable } from './unit-table.ts';

/**
 * Which units a quantity can be written in.
 *
 * @param dimension - what is measured
 * @returns the symbols, the likeliest to be meant first
 * @example
 * unitsOf('ratio').join(' ') // => '1 %'
 */
export function unitsOf(dimension: Dimension): readonly string[] {
  return unitTable[dimension].map((unit) => unit.symbol);
}
