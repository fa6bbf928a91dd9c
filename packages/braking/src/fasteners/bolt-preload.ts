import { requireRange } from '@standstill/numerics';
import { torquePerForce } from './torque-per-force.ts';

export interface BoltPreloadInput {
  /** T, N m. */
  readonly torque: number;
  /** d, m. */
  readonly diameter: number;
  /** K, 1. */
  readonly nutFactor: number;
}

/**
 * Answers which clamp load a torque gives: oiling a thread that the torque was meant dry for raises it.
 *
 * Equation: F = T / (K d).
 * Assumes: as `boltTorque`.
 * Valid: torque up to 2000 N m, diameter 3 to 40 mm, nut factor 0.05 to 0.5.
 *
 * @param input - T, torque, N m; d, diameter, m; K, nut factor, 1
 * @returns F, N
 * @throws OutOfRangeError where an input cannot be
 * Source: [bolt-torque-article]
 * @example
 * boltPreload({ torque: 110, diameter: 0.012, nutFactor: 0.2 }) // => 45833.3
 */
export function boltPreload({ torque, diameter, nutFactor }: BoltPreloadInput): number {
  requireRange('torque', torque, 'N m', 0, 2000);
  return torque / torquePerForce(diameter, nutFactor);
}
