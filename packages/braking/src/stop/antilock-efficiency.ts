import { requireRange } from '@standstill/numerics';
import type { Road } from '../set-up/road.ts';

/** η on a dry and on a wet road, 1, and the surface factors between which the one goes over into the other. */
const dry = { efficiency: 0.956, surfaceFactor: 1 };
const wet = { efficiency: 0.961, surfaceFactor: 0.7 };

/**
 * Answers how much of the peak friction a generic antilock uses while it cycles: what to give the quick stop so that it goes
 * as far as the full stop, where the efficiency comes out of the cycling.
 *
 * Equation: η = 0.956 at surface factor 1 and above, 0.961 at 0.7 and below or on a film of water, straight between.
 * Assumes: the control of `usualAntilockControl` on an even road, that knows the car's speed: a real one, on a real road,
 * may well use less, so that a job gives the value a wide spread.
 * Valid: fitted once, on 400 invented road cars a surface (`drawStop`, seed 2024), to no distance but the median one; the
 * single cars' own efficiencies spread by about 0.02 around it. How far the quick stop is off on other cars stands in
 * docs/quick-against-full.md.
 *
 * @param road - surface factor, 1; depth of water, m
 * @returns 1, mean used over peak friction
 * @throws OutOfRangeError where the surface factor cannot be
 * Source: [common-practice]
 * @example
 * antilockEfficiency(exampleRoad) // => 0.956
 */
export function antilockEfficiency({
  surfaceFactor,
  waterDepth,
}: Pick<Road, 'surfaceFactor' | 'waterDepth'>): number {
  requireRange('surface factor', surfaceFactor, '', 0, 2);
  if (waterDepth > 0) return wet.efficiency;
  const share = (surfaceFactor - wet.surfaceFactor) / (dry.surfaceFactor - wet.surfaceFactor);
  return wet.efficiency + (dry.efficiency - wet.efficiency) * Math.min(1, Math.max(0, share));
}
