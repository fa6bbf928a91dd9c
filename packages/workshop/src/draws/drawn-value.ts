import type { Known } from '../job/known.ts';
import { cutQuantile } from './cut-quantile.ts';

/**
 * One possible value of an uncertain number.
 *
 * Equation: x = value + spread × Φ⁻¹(u), kept inside the range that can be true
 * Assumes: a normal spread.
 *
 * @param known - the number
 * @param share - u, 0 to 1
 * @param spread - one standard deviation, SI; the number's own where left out
 * @returns the value, SI
 */
export function drawnValue(
  { value, spread: own, low, high }: Known,
  share: number,
  spread: number = own,
): number {
  return Math.max(low, Math.min(high, value + spread * cutQuantile(share)));
}
