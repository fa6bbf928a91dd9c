import { numberField } from './number-field.ts';

const on = new Set(['on', 'true', 'yes', 'pressed', 'active', 'applied', 'high']);
const off = new Set(['off', 'false', 'no', 'released', 'inactive', 'low']);

/**
 * The state in a field of a switch column.
 *
 * @param text - the field
 * @param decimalComma - whether the file writes 1,5 for one and a half
 * @returns 1 or 0 for words, the number for numbers; NaN where it says neither
 * @example
 * switchField('ON', false) // => 1
 */
export function switchField(text: string, decimalComma: boolean): number {
  const value = numberField(text, decimalComma);
  if (!Number.isNaN(value)) return value;
  const word = text.trim().toLowerCase();
  if (on.has(word)) return 1;
  return off.has(word) ? 0 : NaN;
}
