import { requireRange } from '@standstill/numerics';

/** rad/s; the measured range, 342 to 1025 rev/min. */
export const mcPheeJohnsonRange = { low: 35.8, high: 107.4 } as const;

/** W/(m² K) per rev/min: slope through the origin of the three printed points. */
const slope = 0.07676;

/**
 * Answers how well the vanes of a vented rotor give heat to the air that they pump, by McPhee and Johnson.
 *
 * Equation: h = 0.07676 N, N in rev/min (ω = 2π N / 60).
 * Assumes: a straight line through the origin fitted to the three measured points (within 3 %); that rotor's vent is
 * like this one's. Other vents pump more or less.
 * Valid: measured from 342 to 1025 rev/min (36 to 107 rad/s); beyond it the line is an extrapolation.
 *
 * @param rotationRate - ω, rad/s
 * @returns W/(m² K), coefficient of vanes and vent faces
 * @throws OutOfRangeError where the rate cannot be
 * Source: [mcphee-2008]
 * @example
 * mcPheeJohnsonVanes(100) // => 73.3004
 */
export function mcPheeJohnsonVanes(rotationRate: number): number {
  const perMinute = (requireRange('rotation rate', rotationRate, 'rad/s', 0, 1000) * 30) / Math.PI;
  return slope * perMinute;
}
