import type { Dimension } from '../dimension/dimension.ts';
import { spellingsOf } from './find-unit.ts';
import { spellingKey } from './spelling-key.ts';

/**
 * Which unit somebody most likely meant by a text that is no unit.
 *
 * Equation: fewest letters put in, left out, changed or swapped; at most 1 in a text of up to 4 letters, 2 in a
 * longer one, and always fewer than the text has
 *
 * @param text - what was written
 * @param dimension - what is wanted
 * @returns the symbol of the nearest unit, or undefined where none is near
 * @example
 * nearestUnit('inn', 'length') // => 'in'
 */
export function nearestUnit(text: string, dimension: Dimension): string | undefined {
  const written = spellingKey(text).toLowerCase();
  const limit = Math.min(written.length > 4 ? 2 : 1, written.length - 1);
  let nearest: string | undefined;
  let least = limit + 1;
  for (const [spelling, unit] of spellingsOf(dimension)) {
    if (spelling === '' || Math.abs(spelling.length - written.length) >= least) continue;
    const distance = editDistance(written, spelling.toLowerCase());
    if (distance < least) {
      least = distance;
      nearest = unit.symbol;
    }
  }
  return nearest;
}

/** Single-letter edits (and swaps of neighbors) that turn one text into the other. */
function editDistance(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const change = last[j - 1]! + (from[i - 1] === to[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      const swap = swapped ? beforeLast[j - 2]! + 1 : Infinity;
      row.push(Math.min(last[j]! + 1, row[j - 1]! + 1, change, swap));
    }
    beforeLast = last;
    last = row;
  }
  return last[to.length]!;
}
