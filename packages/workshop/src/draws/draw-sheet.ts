import { latinHypercube, normalQuantile } from '@standstill/numerics';
import type { Known } from '../job/known.ts';
import type { Draw } from '../settle/draw.ts';

export interface DrawSheetInput {
  readonly knowns: readonly Known[];
  readonly draws: number;
  readonly seed: number;
}

/**
 * Possible values of every uncertain number of a job: draw i of one set-up belongs to draw i of every other.
 *
 * Equation: x = value + spread × Φ⁻¹(u), kept inside the range that can be true; u by Latin hypercube
 * Assumes: normal spreads, independent of each other. A column depends on seed, draws and the number's own path, so
 * that what two set-ups share is drawn once for both.
 *
 * @param input - the uncertain numbers, how many draws, the seed
 * @returns for each draw the function that picks its values
 */
export function drawSheet({ knowns, draws, seed }: DrawSheetInput): readonly Draw[] {
  const keys = knowns.map(({ path }) => path);
  const columns = new Map(keys.map((path, column) => [path, column]));
  const shares = latinHypercube({ draws, keys, seed });
  return Array.from({ length: draws }, (_, row): Draw => {
    return (known) => {
      if (!(known.spread > 0)) return known.value;
      const column = columns.get(known.path);
      if (column === undefined) throw new TypeError(`${known.path} is not on the draw sheet`);
      return drawn(known, shares[row * keys.length + column] ?? 0.5);
    };
  });
}

/** Far tails are cut at 4 standard deviations, where a normal spread says more than anybody knows. */
function drawn({ value, spread, low, high }: Known, share: number): number {
  const normal = Math.max(-4, Math.min(4, normalQuantile(share)));
  return Math.max(low, Math.min(high, value + spread * normal));
}
