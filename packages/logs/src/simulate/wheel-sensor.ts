import { requireRange, type RandomStream } from '@standstill/numerics';
import { denseValue } from './dense-value.ts';
import type { DenseTrace } from './sensor-model.ts';

/** One wheel's speed as the car's own network tells it; what is left out is perfect. */
export interface WheelSensor {
  /** True speed over reading, as a worn or wrong tire makes it. */
  readonly scale?: number;
  /** Share by which the wheel runs slower than the car for every m/s² of deceleration. */
  readonly slip?: number;
  /** m/s, standard deviation of errors that are new with every sample. */
  readonly noise?: number;
  /** m/s, step in which it is written. */
  readonly resolution?: number;
}

/**
 * What a wheel's sensor reads: the car's speed over its scale, less the slip under braking, in steps.
 *
 * Equation: reading = v (1 - k d) / scale + noise, d the deceleration over 50 ms; never below zero
 *
 * @param trace - the truth
 * @param sensor - the wheel
 * @param times - s, when it is read
 * @param random - where its noise comes from
 * @returns m/s
 * @throws OutOfRangeError where the sensor can't be
 */
export function wheelReadings(
  { time, speed }: DenseTrace,
  sensor: WheelSensor,
  times: Float64Array,
  random: RandomStream,
): Float64Array {
  const scale = requireRange('scale of a wheel', sensor.scale ?? 1, '', 0.5, 2);
  const slip = requireRange('slip of a wheel', sensor.slip ?? 0, 's²/m', 0, 0.1);
  const noise = requireRange('noise of a wheel', sensor.noise ?? 0, 'm/s', 0, 10);
  const step = requireRange('resolution of a wheel', sensor.resolution ?? 0, 'm/s', 0, 10);
  return times.map((moment) => {
    const now = denseValue(time, speed, moment);
    const deceleration = Math.max(0, (denseValue(time, speed, moment - 0.05) - now) / 0.05);
    const value = Math.max(0, (now * (1 - slip * deceleration)) / scale + noise * random.normal());
    return step === 0 ? value : Math.round(value / step) * step;
  });
}
