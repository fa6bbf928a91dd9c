import { requireRange } from '@standstill/numerics';
import type { Pad } from '../set-up/pad.ts';

/** Share of its best friction, 1, below which a pad is said to fade (assumed). */
export const fadeShare = 0.8;

/**
 * Answers at which temperature of its face a pad has faded.
 *
 * Equation: the first temperature past the best friction at which μ = 0.8 μ_best, between the points of the table by a
 * straight line.
 * Assumes: the table is the pad's; 0.8 is our line, no standard's.
 * Valid: any table of at least one point.
 *
 * @param pad - its table, °C and 1
 * @returns °C; Infinity where the table ends before the pad fades: then nobody has said that it does not
 * @throws OutOfRangeError where the table is empty or not one
 * Source: [common-practice]
 * @example
 * padFadeTemperature(exampleSetUp.frontBrake.pad) // => 530
 */
export function padFadeTemperature({ frictionTemperatures, frictions }: Pad): number {
  requireRange('points of the friction table', frictions.length, '', 1, 10_000);
  const best = Math.max(...frictions);
  const limit = fadeShare * best;
  for (let i = frictions.indexOf(best) + 1; i < frictions.length; i += 1) {
    const [hotter, cooler] = [frictions[i] ?? 0, frictions[i - 1] ?? 0];
    if (hotter > limit) continue;
    const [to, from] = [frictionTemperatures[i] ?? Infinity, frictionTemperatures[i - 1] ?? Infinity];
    return from + ((to - from) * (cooler - limit)) / (cooler - hotter);
  }
  return Infinity;
}
