import { requireRange } from '@standstill/numerics';

export interface SteadyDecelerationInput {
  /** v, m/s, at the first touch. */
  readonly speed: number;
  /** S, m, from the first touch to rest. */
  readonly distance: number;
  /** S_0, m, granted for the build-up. */
  readonly buildUp: number;
}

/**
 * Answers which steady deceleration a distance asks for once the part granted for the build-up is off.
 *
 * Equation: a = v² / (2 (S − S_0)).
 * Assumes: nothing slows the car during the build-up, and a steady deceleration after it.
 * Valid: 1 to 100 m/s; the distance longer than what is granted.
 *
 * @param input - v, speed, m/s; S, distance, m; S_0, part for the build-up, m
 * @returns m/s², steady deceleration
 * @throws OutOfRangeError where an input cannot be
 * Source: [un-r13]
 * @example
 * steadyDeceleration({ speed: 27.7777778, distance: 168, buildUp: 10 }) // => 2.44179
 */
export function steadyDeceleration({ speed, distance, buildUp }: SteadyDecelerationInput): number {
  requireRange('speed', speed, 'm/s', 1, 100);
  requireRange('part of the distance for the build-up', buildUp, 'm', 0, 1000);
  requireRange('stopping distance', distance, 'm', buildUp + 1e-3, 10_000);
  return (speed * speed) / (2 * (distance - buildUp));
}
