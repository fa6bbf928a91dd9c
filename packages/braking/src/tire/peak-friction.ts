import { requireRange } from '@standstill/numerics';
import { tirePeakForce, type TireOnRoad } from './tire-peak-force.ts';

/**
 * Answers the peak friction of one tire at a load: a heavier loaded tire has less of it.
 *
 * Equation: μ = λ_μ μ_0 (F_z / F_z0)^−n.
 * Assumes: as `tirePeakForce`.
 * Valid: load from 1 N (the power law has no value at zero load) to 50 kN.
 *
 * @param input - tire; F_z, load of one wheel, N; λ_μ, surface factor, 1
 * @returns 1, peak longitudinal force over load
 * @throws OutOfRangeError where an input cannot be
 * Source: [pacejka]
 * @example
 * peakFriction({ tire: exampleSetUp.frontTire, load: 7000, surfaceFactor: 1 }) // => 0.933033
 */
export function peakFriction({ tire, load, surfaceFactor }: TireOnRoad): number {
  requireRange('wheel load', load, 'N', 1, 50_000);
  return tirePeakForce({ tire, load, surfaceFactor }) / load;
}
