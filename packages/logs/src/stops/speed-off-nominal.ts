/** Where an entry speed lies against the nominal speed. */
export type NominalVerdict = 'within' | 'too-slow' | 'too-fast';

/** km/h that an approach may be over the target, by the instrument limits of SAE J299. */
const greatestExcess = 12 / 3.6;

/**
 * Whether a stop was begun fast enough, and not too fast, for the speed that it is meant from.
 *
 * Equation: v0 ≥ 0.98 V; v0 ≤ V + 12 km/h
 *
 * @param entrySpeed - v0, m/s
 * @param nominalSpeed - V, m/s
 * @returns the verdict
 * Source: [un-r13], [sae-j299]
 * @example
 * speedOffNominal(97.9, 100) // => 'too-slow'
 */
export function speedOffNominal(entrySpeed: number, nominalSpeed: number): NominalVerdict {
  const rounding = 1e-12 * nominalSpeed;
  if (entrySpeed < 0.98 * nominalSpeed - rounding) return 'too-slow';
  return entrySpeed > nominalSpeed + greatestExcess + rounding ? 'too-fast' : 'within';
}
