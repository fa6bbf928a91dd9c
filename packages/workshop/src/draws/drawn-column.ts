import { latinHypercubeColumn, normalQuantile } from '@standstill/numerics';
import type { Known } from '../job/known.ts';
import type { DrawBlock } from './draw-block.ts';

/** Standard deviations at which tails are cut: farther out a normal spread says more than anybody knows. */
const farthest = 4;

/**
 * Fills an array with the possible values of one number in the draws of one block.
 *
 * Equation: x = value + spread × Φ⁻¹(u), kept inside the range that can be true; u by Latin hypercube
 * Assumes: a normal spread, independent of all others. The values depend on seed, length and number of the block and
 * the number's own path, so that what two set-ups share is drawn once for both.
 *
 * @param known - the number
 * @param block - which block
 * @param seed - of all draws
 * @param into - one place for each draw of the block; gets SI values
 */
export function drawnColumn(known: Known, block: DrawBlock, seed: number, into: Float64Array): void {
  const { value, spread, low, high, path } = known;
  latinHypercubeColumn({ key: block.number === 0 ? path : `${path}#${block.number}`, seed }, into);
  for (let i = 0; i < into.length; i += 1) {
    const normal = Math.max(-farthest, Math.min(farthest, normalQuantile(into[i]!)));
    into[i] = Math.max(low, Math.min(high, value + spread * normal));
  }
}
