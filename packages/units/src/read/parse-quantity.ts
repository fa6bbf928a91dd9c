import type { Dimension } from '../dimension/dimension.ts';
import { quantityFrom } from './quantity-from.ts';
import { readNumber } from './read-number.ts';
import type { Reading } from './reading.ts';
import { refuse } from './refuse.ts';

/**
 * Reads a quantity the way people write it: '14 in', '14"', '5/8 in', '85 lb-ft', '53 %', '1,300 kg', '0,5 m'.
 *
 * Assumes: the dimension is known from the field, so 'lb' is pound-force where a force is wanted, and 90 °F is 50 K
 * where a temperature difference is wanted. A missing unit is refused, except for a ratio.
 *
 * @param text - what somebody wrote
 * @param dimension - what is wanted
 * @returns the quantity in SI, or a refusal that says what would be accepted
 * @example
 * parseQuantity('14"', 'length') // => { ok: true, value: 0.3556, unit: 'in', number: 14 }
 */
export function parseQuantity(text: string, dimension: Dimension): Reading {
  const found = text.trim();
  if (found === '') return refuse('empty', found, dimension);
  const read = readNumber(found);
  if (!read.ok) return refuse(read.code, found, dimension);
  const unit = read.rest.replace(/^ ?-(?=\p{L})/u, '');
  return quantityFrom(read.number, unit, dimension, found);
}
