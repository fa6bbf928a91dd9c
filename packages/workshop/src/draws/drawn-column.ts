import { latinHypercubeColumn, sobolColumn, sobolDimensions } from '@standstill/numerics';
import type { Known } from '../job/known.ts';
import type { DrawBlock } from './draw-block.ts';
import { cutQuantile } from './cut-quantile.ts';

export interface DrawnColumnPlan {
  readonly known: Known;
  /** Which block. */
  readonly block: DrawBlock;
  /** Of all draws. */
  readonly seed: number;
  /** Dimension of the Sobol sequence; null for a Latin hypercube. */
  readonly dimension: number | null;
}

/**
 * Fills an array with the possible values of one number in the draws of one block.
 *
 * Equation: x = value + spread × Φ⁻¹(u), kept inside the range that can be true; u by Latin hypercube, each block one, or
 * by the Sobol sequence, which goes on from block to block
 * Assumes: a normal spread, independent of all others. The values depend on seed, block, the number's own path, and with
 * Sobol on its dimension, so that what two set-ups share is drawn once for both.
 *
 * @param plan - the number, the block, the seed, the dimension
 * @param into - one place for each draw of the block; gets SI values
 */
export function drawnColumn({ known, block, seed, dimension }: DrawnColumnPlan, into: Float64Array): void {
  const { path, value, spread, low, high } = known;
  if (dimension !== null && dimension < sobolDimensions)
    sobolColumn({ dimension, key: path, seed, from: block.from }, into);
  else latinHypercubeColumn({ key: block.number === 0 ? path : `${path}#${block.number}`, seed }, into);
  for (let i = 0; i < into.length; i += 1) {
    into[i] = Math.max(low, Math.min(high, value + spread * cutQuantile(into[i]!)));
  }
}
