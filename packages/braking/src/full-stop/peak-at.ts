import { figure, wheelStride } from './wheel-places.ts';

/** How far from the anchor the power law is carried by its series, relative: it is then off by less than 2e-8. */
const reach = 0.03;

const { peakScale, peakExponent, anchorLoad, anchorPeak } = figure;

/**
 * Answers the peak force of one tire of a table of wheels at a load, by a series around a load nearby that is renewed when
 * the load has moved away from it.
 *
 * Equation: F_peak = s F_z^e = F_a (1 + e d (1 + (e − 1) d / 2 (1 + (e − 2) d / 3))), d = (F_z − F_za) / F_za.
 *
 * @param table - the table of wheels
 * @param wheel - 0 to 3
 * @param load - F_z, N
 * @returns N
 * Source: [power-law-load]
 */
export function peakAt(table: Float64Array, wheel: number, load: number): number {
  const row = wheelStride * wheel;
  const anchor = table[row + anchorLoad]!;
  const off = (load - anchor) / anchor;
  const e = table[row + peakExponent]!;
  if (off < reach && off > -reach)
    return table[row + anchorPeak]! * (1 + e * off * (1 + (e - 1) * off * (0.5 + ((e - 2) / 6) * off)));
  if (load < 1) return load > 0 ? table[row + peakScale]! * Math.pow(load, e) : 0;
  const peak = table[row + peakScale]! * Math.pow(load, e);
  table[row + anchorLoad] = load;
  table[row + anchorPeak] = peak;
  return peak;
}
