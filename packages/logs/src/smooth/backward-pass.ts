import { rtsSmoother, type GaussianState, type LinearStep } from '@standstill/numerics';
import type { ForwardMotion } from './forward-pass.ts';
import {
  accelerationAt,
  distanceAt,
  fillMotionStep,
  speedAt,
  type MotionLayout,
  type MotionNoise,
} from './motion-step.ts';
import type { SmootherSteps } from './smoother-steps.ts';
import type { StopSensors } from './stop-sensors.ts';

/** A stop by hindsight of all its sensors. */
export interface SmoothedStop {
  /** s on the logger's clock. */
  readonly time: Float64Array;
  /** m/s. */
  readonly speed: Float64Array;
  /** m/s, standard error. */
  readonly speedError: Float64Array;
  /** m/s², forward positive. */
  readonly acceleration: Float64Array;
  /** Index of the start of the distance. */
  readonly start: number;
  /** m, from the start to the last step. */
  readonly distance: number;
  /** m, its standard error, with all that speed, latency, bias and pitch have in common. */
  readonly distanceError: number;
  /** s, how late the speed is, with its standard error; as given where no accelerometer tells. */
  readonly latency: number;
  readonly latencyError: number;
}

/** What a step back needs of the densities: nothing, as they are in what was predicted. */
const none: MotionNoise = { jerk: 0, bias: 0, wander: 0 };

/**
 * Makes the way back of the smoother, from the last step to the first that is shown.
 *
 * @param layout - which unknowns there are
 * @returns overwrites what was filtered with what is known by hindsight, m and s, and describes it
 * Source: [rauch-tung-striebel]
 */
export function backwardPass(
  layout: MotionLayout,
): (steps: SmootherSteps, sensors: StopSensors, forward: ForwardMotion) => SmoothedStop {
  const { size } = layout;
  const smooth = rtsSmoother(size);
  const matrix = (): Float64Array => new Float64Array(size * size);
  const step: LinearStep = { transition: matrix(), noise: matrix() };
  return (steps, sensors, { filtered, predicted, last }) => {
    const first = firstShown(steps, sensors.shownFrom);
    for (let k = steps.count - 2; k >= first; k -= 1) {
      fillMotionStep(step, layout, steps.time[k + 1]! - steps.time[k]!, none, k + 1 === steps.start);
      smooth({
        transition: step.transition,
        filtered: filtered[k]!,
        predicted: predicted[k + 1]!,
        smoothed: filtered[k + 1]!,
      });
    }
    return described(layout, steps, sensors, { states: filtered, last, first });
  };
}

function described(
  layout: MotionLayout,
  steps: SmootherSteps,
  sensors: StopSensors,
  { states, last, first }: { states: readonly GaussianState[]; last: GaussianState; first: number },
): SmoothedStop {
  const column = (at: (state: GaussianState) => number): Float64Array => {
    const values = new Float64Array(steps.count - first);
    for (let k = 0; k < values.length; k += 1) values[k] = at(states[first + k]!);
    return values;
  };
  const hasLatency = layout.latency >= 0;
  return {
    time: steps.time.slice(first),
    speed: column(({ mean }) => Math.max(0, mean[speedAt]!)),
    speedError: column((state) => errorOf(state, speedAt)),
    acceleration: column(({ mean }) => mean[accelerationAt]!),
    start: steps.start - first,
    distance: last.mean[distanceAt]!,
    distanceError: errorOf(last, distanceAt),
    latency: hasLatency ? last.mean[layout.latency]! : sensors.latency.value,
    latencyError: hasLatency ? errorOf(last, layout.latency) : sensors.latency.standardError,
  };
}

/** Index of the last step before what is shown. */
function firstShown({ time, start }: SmootherSteps, from: number): number {
  let first = start;
  while (first > 0 && time[first]! > from) first -= 1;
  return first;
}

function errorOf({ mean, covariance }: GaussianState, at: number): number {
  return Math.sqrt(Math.max(0, covariance[at * mean.length + at]!));
}
