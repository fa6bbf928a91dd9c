import type { Dimension } from '../dimension/dimension.ts';
import { findUnit } from '../read/find-unit.ts';
import type { Unit } from '../table/unit.ts';
import { UnknownUnitError } from './unknown-unit-error.ts';

/**
 * The row of the unit table for a unit that must exist.
 *
 * @param unit - symbol or spelling
 * @param dimension - what is measured
 * @returns the row
 * @throws UnknownUnitError where the dimension has no such unit
 */
export function unitBySymbol(unit: string, dimension: Dimension): Unit {
  const found = findUnit(unit, dimension, 'as-written');
  if (!found) throw new UnknownUnitError(unit, dimension);
  return found;
}
