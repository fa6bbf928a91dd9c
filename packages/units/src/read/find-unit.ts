import type { Dimension } from '../dimension/dimension.ts';
import { dimensions } from '../dimension/dimensions.ts';
import type { Unit } from '../table/unit.ts';
import { unitTable } from '../table/unit-table.ts';
import { spellingKey } from './spelling-key.ts';

type Spellings = ReadonlyMap<string, Unit>;

const exact = new Map<Dimension, Spellings>();

/**
 * The unit that a text means where a dimension is wanted, written exactly or with other capitals.
 *
 * @param text - a unit as somebody wrote it
 * @param dimension - what is wanted
 * @param capitals - 'as-written' or 'any'; 'any' still keeps m (milli) and M (mega) apart
 * @returns the unit, or undefined
 */
export function findUnit(
  text: string,
  dimension: Dimension,
  capitals: 'as-written' | 'any',
): Unit | undefined {
  const key = spellingKey(text);
  const spellings = spellingsOf(dimension);
  if (capitals === 'as-written') return spellings.get(key);
  for (const [spelling, unit] of spellings) {
    if (spelling.toLowerCase() === key.toLowerCase() && samePrefixes(key, spelling)) return unit;
  }
  return undefined;
}

/**
 * In which dimensions a text is a unit, capitals as written.
 *
 * @param text - a unit as somebody wrote it
 * @param capitals - as for `findUnit`
 * @returns the dimensions, in table order
 */
export function dimensionsOfUnit(text: string, capitals: 'as-written' | 'any'): readonly Dimension[] {
  return dimensions.filter((dimension) => findUnit(text, dimension, capitals) !== undefined);
}

/** All spellings of a dimension's units, built when first asked for. */
export function spellingsOf(dimension: Dimension): Spellings {
  const known = exact.get(dimension);
  if (known) return known;
  const spellings = new Map<string, Unit>();
  for (const unit of unitTable[dimension]) {
    for (const text of [unit.symbol, ...unit.spellings]) {
      const key = spellingKey(text);
      if (!spellings.has(key)) spellings.set(key, unit);
    }
  }
  exact.set(dimension, spellings);
  return spellings;
}

/** Letters that can follow a metric prefix: 'mm' and 'Mm' differ in size, 'mph' and 'Mph' only in looks. */
const prefixed = /^[gmsNPWJLlbH]/u;

/** False where M stands for m or m for M as a prefix, except in a text that has no small letters ('MM', 'MPH'). */
function samePrefixes(written: string, spelling: string): boolean {
  const allCapitals = written === written.toUpperCase();
  for (let i = 0; i < spelling.length; i += 1) {
    if (spelling[i] === 'M' && written[i] === 'm') return false;
    const prefix = spelling[i] === 'm' && prefixed.test(spelling.slice(i + 1));
    if (prefix && written[i] === 'M' && !allCapitals) return false;
  }
  return true;
}
