import { requireRange } from '@standstill/numerics';
import { torquePerForce } from './torque-per-force.ts';

export interface BoltTorqueInput {
  /** F, N, clamp load wanted. */
  readonly preload: number;
  /** d, m, nominal diameter. */
  readonly diameter: number;
  /** K, 1, nut factor. */
  readonly nutFactor: number;
}

/**
 * Answers which torque gives a bolt its clamp load. A figure of the car's maker always overrides it.
 *
 * Equation: T = K F d.
 * Assumes: one nut factor for thread and head together. It scatters by a quarter to a third for a hand torque on dry
 * threads, whatever the wrench, so that the load does too.
 * Valid: preload up to 1 MN, diameter 3 to 40 mm, nut factor 0.05 to 0.5.
 *
 * @param input - F, preload, N; d, diameter, m; K, nut factor, 1
 * @returns T, N m
 * @throws OutOfRangeError where an input cannot be
 * Source: [bolt-torque-article]
 * @example
 * boltTorque({ preload: 34226, diameter: 0.012, nutFactor: 0.2 }) // => 82.1424
 */
export function boltTorque({ preload, diameter, nutFactor }: BoltTorqueInput): number {
  requireRange('preload', preload, 'N', 0, 1e6);
  return preload * torquePerForce(diameter, nutFactor);
}
