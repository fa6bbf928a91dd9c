import type { Wheel } from './wheel.ts';

/** How far from the anchor the power law is carried by its series, relative: it is then off by less than 2e-8. */
const reach = 0.03;

/**
 * Answers the peak force of one tire at a load, by a series around a load nearby that is renewed when the load has moved
 * away from it.
 *
 * Equation: F_peak = s F_z^e = F_a (1 + e d (1 + (e − 1) d / 2 (1 + (e − 2) d / 3))), d = (F_z − F_za) / F_za.
 *
 * @param wheel - the wheel
 * @param load - F_z, N
 * @returns N
 * Source: [power-law-load]
 */
export function peakAt(wheel: Wheel, load: number): number {
  const off = load * wheel.perAnchor - 1;
  const e = wheel.peakExponent;
  if (off < reach && off > -reach)
    return wheel.anchorPeak * (1 + e * off * (1 + (e - 1) * off * (0.5 + (e - 2) * off * (1 / 6))));
  return renewed(wheel, load);
}

/** N at a load, N, around which the series is carried from now on. */
function renewed(wheel: Wheel, load: number): number {
  if (load <= 0) return 0;
  const peak = wheel.peakScale * Math.pow(load, wheel.peakExponent);
  if (load < 1) return peak;
  wheel.perAnchor = 1 / load;
  wheel.anchorPeak = peak;
  return peak;
}
