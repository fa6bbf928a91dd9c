import { requireRange } from '@standstill/numerics';

export interface LinearBuildUpInput {
  /** v_0, m/s. */
  readonly speed: number;
  /** t_r, s over which the deceleration rises in a straight line from zero. */
  readonly buildUpTime: number;
  /** a, m/s², held after it. */
  readonly deceleration: number;
}

export interface LinearBuildUpStop {
  /** m. */
  readonly distance: number;
  /** s. */
  readonly time: number;
  /** m/s, when the deceleration is fully there. */
  readonly speedAfterBuildUp: number;
}

/**
 * Answers how far a car goes whose deceleration rises in a straight line and is then held.
 *
 * Equation: S = v_0 t_r − a t_r² / 6 + (v_0 − a t_r / 2)² / (2 a); t = v_0 / a + t_r / 2.
 * Assumes: the car is still rolling when the deceleration is fully there.
 * Valid: a t_r / 2 below v_0.
 *
 * @param input - v_0, speed, m/s; t_r, build-up time, s; a, deceleration, m/s²
 * @returns distance, m; time, s; speed after the build-up, m/s
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 * @example
 * linearBuildUpStop({ speed: 27.7778, buildUpTime: 0.4, deceleration: 8.5 }).distance // => 50.8875
 */
export function linearBuildUpStop({
  speed,
  buildUpTime,
  deceleration,
}: LinearBuildUpInput): LinearBuildUpStop {
  requireRange('speed', speed, 'm/s', 0, 150);
  requireRange('deceleration', deceleration, 'm/s²', 0.1, 30);
  requireRange('build-up time', buildUpTime, 's', 0, (2 * speed) / deceleration);
  const speedAfterBuildUp = speed - (deceleration * buildUpTime) / 2;
  const building = speed * buildUpTime - (deceleration * buildUpTime * buildUpTime) / 6;
  return {
    distance: building + (speedAfterBuildUp * speedAfterBuildUp) / (2 * deceleration),
    time: buildUpTime + speedAfterBuildUp / deceleration,
    speedAfterBuildUp,
  };
}
