import { requireRange } from '@standstill/numerics';

export interface VacuumAtAltitudeInput {
  /** Δp_0, Pa below ambient, vacuum that the engine makes at sea level. */
  readonly seaLevelVacuum: number;
  /** H, m above sea level. */
  readonly altitude: number;
}

/**
 * Answers how much vacuum is left for the booster at an altitude.
 *
 * Equation: Δp = Δp_0 (1 − 2.25577e-5 H)^5.25588 (the standard atmosphere's pressure ratio).
 * Assumes: the manifold's absolute pressure keeps its ratio to the ambient pressure; a vacuum pump behaves alike.
 * Valid: 0 to 5000 m.
 *
 * @param input - Δp_0, vacuum at sea level, Pa; H, altitude, m
 * @returns Pa below ambient
 * @throws OutOfRangeError where an input cannot be
 * Source: [standard-atmosphere]
 * @example
 * vacuumAtAltitude({ seaLevelVacuum: 70000, altitude: 2000 }) // => 54919
 */
export function vacuumAtAltitude({ seaLevelVacuum, altitude }: VacuumAtAltitudeInput): number {
  requireRange('vacuum at sea level', seaLevelVacuum, 'Pa', 0, 101_325);
  requireRange('altitude', altitude, 'm', 0, 5000);
  return seaLevelVacuum * Math.pow(1 - 2.25577e-5 * altitude, 5.25588);
}
