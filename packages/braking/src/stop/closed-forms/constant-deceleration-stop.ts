import { requireRange } from '@standstill/numerics';
import { standardGravity } from '../../load/standard-gravity.ts';

export interface ConstantDecelerationInput {
  /** v, m/s. */
  readonly speed: number;
  /** a, m/s², on the level. */
  readonly deceleration: number;
  /** G, rise over run, 1; positive uphill; 0 where left out. */
  readonly grade?: number;
  /** s before the deceleration begins, at full speed; 0 where left out. */
  readonly reactionTime?: number;
}

export interface ConstantDecelerationStop {
  /** m under braking. */
  readonly brakingDistance: number;
  /** m before it. */
  readonly reactionDistance: number;
  /** m, both. */
  readonly distance: number;
  /** s under braking. */
  readonly brakingTime: number;
}

/**
 * Answers how far a car goes that slows at one deceleration from full speed to rest, with a reaction before it.
 *
 * Equation: d = v t_r + v² / (2 (a + g sin θ)), θ = atan(G).
 * Assumes: the deceleration is there at once; the grade adds its share of weight.
 * Valid: a from 0.1 to 30 m/s², wherever the car still slows on the grade.
 *
 * @param input - v, speed, m/s; a, deceleration on the level, m/s²; G, grade, 1; reaction time, s
 * @returns distances under braking, before it and both, m; time under braking, s
 * @throws OutOfRangeError where an input cannot be, or the car does not slow
 * Source: [aashto-green-book]
 * @example
 * constantDecelerationStop({ speed: 26.8224, deceleration: 6.096 }).distance // => 59.0093
 */
export function constantDecelerationStop(input: ConstantDecelerationInput): ConstantDecelerationStop {
  const { speed, deceleration, grade = 0, reactionTime = 0 } = input;
  requireRange('speed', speed, 'm/s', 0, 150);
  requireRange('deceleration', deceleration, 'm/s²', 0.1, 30);
  requireRange('grade', grade, '', -1, 1);
  requireRange('reaction time', reactionTime, 's', 0, 60);
  const along = deceleration + (standardGravity * grade) / Math.sqrt(1 + grade * grade);
  requireRange('deceleration on the grade', along, 'm/s²', 1e-3, 40);
  const brakingDistance = (speed * speed) / (2 * along);
  const reactionDistance = speed * reactionTime;
  return {
    brakingDistance,
    reactionDistance,
    distance: brakingDistance + reactionDistance,
    brakingTime: speed / along,
  };
}
