import type { Dimension } from '../dimension/dimension.ts';
import type { Unit } from '../table/unit.ts';
import { dimensionsOfUnit, findUnit } from './find-unit.ts';
import { nearestUnit } from './nearest-unit.ts';
import type { Reading } from './reading.ts';
import { refuse } from './refuse.ts';

/**
 * Reads a number with its unit given apart, as in `{ value: 14, unit: 'in' }`.
 *
 * @param value - the number, in `unit`
 * @param unit - the unit as somebody wrote it; '' only where a ratio is wanted
 * @param dimension - what is wanted
 * @param found - the text to show where it is refused
 * @returns the quantity in SI, or a refusal that says what would be accepted
 * @example
 * quantityFrom(14, 'in', 'length') // => { ok: true, value: 0.3556, unit: 'in', number: 14 }
 */
export function quantityFrom(
  value: number,
  unit: string,
  dimension: Dimension,
  found: string = `${value} ${unit}`.trim(),
): Reading {
  if (!Number.isFinite(value)) return refuse('not-finite', found, dimension);
  const asWritten = findUnit(unit, dimension, 'as-written');
  if (asWritten) return quantity(value, asWritten, dimension, found);
  if (unit.trim() === '') return refuse('missing-unit', found, dimension);
  const elsewhere = dimensionsOfUnit(unit, 'as-written')[0];
  const anyCapitals = elsewhere ? undefined : findUnit(unit, dimension, 'any');
  if (anyCapitals) return quantity(value, anyCapitals, dimension, found);
  const foundUnit = unit.trim();
  const nearest = nearestUnit(unit, dimension);
  const foundDimension = elsewhere ?? (nearest ? undefined : dimensionsOfUnit(unit, 'any')[0]);
  if (foundDimension) return { ...refuse('wrong-dimension', found, dimension), foundUnit, foundDimension };
  return { ...refuse('unknown-unit', found, dimension), foundUnit, nearest };
}

function quantity(number: number, unit: Unit, dimension: Dimension, found: string): Reading {
  const value = ((number - unit.zero) * unit.times) / unit.over;
  if (!Number.isFinite(value)) return refuse('not-finite', found, dimension);
  return { ok: true, value, unit: unit.symbol, number };
}
