import { requireRange } from '@standstill/numerics';
import { standardGravity } from '../../load/standard-gravity.ts';

export interface SkidInput {
  /** D, m, length of the skid to rest. */
  readonly distance: number;
  /** f, 1, friction of the sliding tires. */
  readonly friction: number;
}

/**
 * Answers how fast a car was that slid to rest over a distance.
 *
 * Equation: v = √(2 f g D); in mph and feet √(30 D f).
 * Assumes: level road, all wheels slide from the start, no drag.
 * Valid: friction 0.01 to 5.
 *
 * @param input - D, skid length, m; f, sliding friction, 1
 * @returns m/s, speed at the start of the skid
 * @throws OutOfRangeError where an input cannot be
 * Source: [skid-speed]
 * @example
 * speedFromSkid({ distance: 12.192, friction: 0.7 }) // => 12.9378
 */
export function speedFromSkid({ distance, friction }: SkidInput): number {
  requireRange('skid length', distance, 'm', 0, 10_000);
  return Math.sqrt(2 * requireRange('friction', friction, '', 0.01, 5) * standardGravity * distance);
}
