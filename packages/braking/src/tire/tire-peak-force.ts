import { requireRange } from '@standstill/numerics';
import type { Tire } from '../set-up/tire.ts';

export interface TireOnRoad {
  readonly tire: Tire;
  /** F_z, N, load of one wheel. */
  readonly load: number;
  /** λ_μ, 1, surface friction over the dry road on which the tire's figure holds. */
  readonly surfaceFactor: number;
}

/**
 * Answers the greatest brake force that one tire can put on the road.
 *
 * Equation: F_peak = λ_μ μ_0 F_z0 (F_z / F_z0)^(1 − n).
 * Assumes: friction falls with load as a power law; the surface scales it by one factor.
 * Valid: load from 0 to 50 kN; n from 0 to 0.5. Far from the nominal load the power law is an extrapolation.
 *
 * @param input - tire; F_z, load of one wheel, N; λ_μ, surface factor, 1
 * @returns N, peak longitudinal force of one tire; zero at zero load
 * @throws OutOfRangeError where an input cannot be
 * Source: [pacejka]
 * @example
 * tirePeakForce({ tire: exampleSetUp.frontTire, load: 3500, surfaceFactor: 1 }) // => 3500
 */
export function tirePeakForce({ tire, load, surfaceFactor }: TireOnRoad): number {
  requireTireFigures(tire, surfaceFactor);
  requireRange('wheel load', load, 'N', 0, 50_000);
  if (load === 0) return 0;
  const scale = surfaceFactor * tire.peakFriction * tire.nominalLoad;
  return scale * Math.pow(load / tire.nominalLoad, 1 - tire.loadSensitivity);
}

/**
 * Refuses a tire or a surface whose figures of friction cannot be.
 *
 * Valid: peak friction 0 to 3, nominal load 100 N to 50 kN, load sensitivity 0 to 0.5, surface factor 0 to 2.
 *
 * @param tire - tire with μ_0, 1; F_z0, N; n, 1
 * @param surfaceFactor - λ_μ, 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [pacejka]
 */
export function requireTireFigures(tire: Tire, surfaceFactor: number): void {
  requireRange('peak friction', tire.peakFriction, '', 0, 3);
  requireRange('nominal load', tire.nominalLoad, 'N', 100, 50_000);
  requireRange('load sensitivity', tire.loadSensitivity, '', 0, 0.5);
  requireRange('surface factor', surfaceFactor, '', 0, 2);
}
