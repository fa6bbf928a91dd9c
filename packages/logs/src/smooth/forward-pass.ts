import { gaussianState, kalmanPredictor, type GaussianState, type LinearStep } from '@standstill/numerics';
import {
  fillMotionStep,
  speedAt,
  accelerationAt,
  type MotionLayout,
  type MotionNoise,
} from './motion-step.ts';
import { readingsOfStep, type Linearization, type Misfit } from './readings-of-step.ts';
import type { SmootherSteps } from './smoother-steps.ts';
import type { StopSensors } from './stop-sensors.ts';

/** The motion of a stop as the filter found it on its way forward. Overwritten by the next pass. */
export interface ForwardMotion {
  /** After the readings of each step, and before them. */
  readonly filtered: readonly GaussianState[];
  readonly predicted: readonly GaussianState[];
  readonly last: GaussianState;
  /** Mean of the squared innovations over what they should be: 1 where the noise is as stated. */
  readonly speedMisfit: number;
  readonly accelerationMisfit: number;
}

/** (m/s³)² s: how restless the acceleration of a car is in cruise, in the application, while braking. Common practice. */
const jerk = { cruising: 9, applying: 900, braking: 60 };
/** (m/s²)²/s: the bias of an accelerometer hardly wanders, but the body swings while the car brakes. Common practice. */
const biasWander = { cruising: 1e-3, braking: 1e-2 };
/** What the pitch of a body adds, as a share of the deceleration: 2° at 1 g. Common practice. */
export const usualPitch = 0.035;
/** One standard deviation of it, with the scale of the sensor. Common practice. */
const pitchSpread = 0.025;

/**
 * Makes the way forward of the smoother.
 *
 * @param layout - which unknowns there are
 * @returns takes the steps and readings of a stop, s and SI, and where they are linearized; room is kept from pass to pass
 */
export function forwardPass(
  layout: MotionLayout,
): (steps: SmootherSteps, sensors: StopSensors, at: Linearization) => ForwardMotion {
  const { size } = layout;
  const predict = kalmanPredictor(size);
  const take = readingsOfStep(layout);
  const state = gaussianState(size);
  const matrix = (): Float64Array => new Float64Array(size * size);
  const step: LinearStep = { transition: matrix(), noise: matrix() };
  const noise: MotionNoise = { jerk: 0, bias: 0, wander: 0 };
  const filtered: GaussianState[] = [];
  const predicted: GaussianState[] = [];
  return (steps, sensors, at) => {
    const misfit: Misfit = { speed: 0, speeds: 0, acceleration: 0, accelerations: 0 };
    begin(state, layout, sensors);
    for (let k = 0; k < steps.count; k += 1) {
      if (k > 0) {
        densities(noise, sensors, steps.time[k]!);
        fillMotionStep(step, layout, steps.time[k]! - steps.time[k - 1]!, noise, k === steps.start);
        predict(state, step);
      }
      keep(predicted, k, state);
      take(state, { steps, sensors, at, misfit }, k);
      keep(filtered, k, state);
    }
    return {
      filtered,
      predicted,
      last: state,
      speedMisfit: misfit.speed / Math.max(1, misfit.speeds),
      accelerationMisfit: misfit.acceleration / Math.max(1, misfit.accelerations),
    };
  };
}

/** What is believed before the first reading. */
function begin({ mean, covariance }: GaussianState, layout: MotionLayout, sensors: StopSensors): void {
  mean.fill(0);
  covariance.fill(0);
  const set = (at: number, value: number, deviation: number): void => {
    if (at < 0) return;
    mean[at] = value;
    covariance[at * layout.size + at] = deviation * deviation;
  };
  set(speedAt, sensors.speed.values[0]!, 3);
  set(accelerationAt, 0, 2);
  set(layout.wander, 0, sensors.speed.wander);
  set(layout.latency, sensors.latency.value, sensors.latency.standardError);
  set(layout.bias, sensors.acceleration?.bias ?? 0, sensors.acceleration?.biasSpread ?? 0);
  set(layout.pitch, usualPitch, pitchSpread);
  set(layout.place, sensors.position?.values[0] ?? 0, 100);
}

function densities(noise: MotionNoise, { application, rest, speed }: StopSensors, now: number): void {
  const isBraking = now > application.from && now < rest.to;
  noise.wander = speed.wander;
  noise.bias = isBraking ? biasWander.braking : biasWander.cruising;
  if (isBraking) noise.jerk = now < application.to || now > rest.from ? jerk.applying : jerk.braking;
  else noise.jerk = jerk.cruising;
}

function keep(states: GaussianState[], index: number, { mean, covariance }: GaussianState): void {
  const kept = (states[index] ??= gaussianState(mean.length));
  kept.mean.set(mean);
  kept.covariance.set(covariance);
}
