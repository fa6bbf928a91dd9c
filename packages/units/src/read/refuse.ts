import { dimensionWords } from '../dimension/dimension-words.ts';
import type { Dimension } from '../dimension/dimension.ts';
import { unitsOf } from '../table/units-of.ts';
import type { RefusalOf } from './reading.ts';
import type { RefusalCode } from './refusal-codes.ts';

/**
 * The part that all refusals share: what was found and what would be accepted.
 *
 * @param code - why
 * @param found - the text that was refused
 * @param dimension - what was wanted
 * @returns the refusal
 */
export function refuse<Code extends RefusalCode>(
  code: Code,
  found: string,
  dimension: Dimension,
): RefusalOf<Code> {
  const example = dimensionWords[dimension].examples[0];
  return { ok: false, code, found, dimension, accepted: { units: unitsOf(dimension), example } };
}
