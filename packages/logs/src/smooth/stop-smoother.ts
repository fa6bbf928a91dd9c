import { backwardPass, type SmoothedStop } from './backward-pass.ts';
import { forwardPass, usualPitch } from './forward-pass.ts';
import type { MotionLayout } from './motion-step.ts';
import { smootherSteps } from './smoother-steps.ts';
import type { StopSensors } from './stop-sensors.ts';

/**
 * Smooths the motion of one stop: a Kalman filter forward over whichever sensors there are, twice where the delay of the
 * speed has to be found first, and back by Rauch, Tung and Striebel. The distance begins at zero at the start, so that its
 * variance at the end is that of the whole stop.
 *
 * Assumes: the delay of the speed and the pitch of the body are one number each in a stop; errors are normal; readings
 * enter at the nearest step and are carried there along the acceleration. Where the first pass leaves more over than the
 * stated noise, the second takes the noise as so much larger.
 *
 * @param layout - which unknowns there are
 * @returns takes a stop's sensors, s and SI; gives its motion; room is kept from stop to stop
 * Source: [rauch-tung-striebel], [common-practice]
 */
export function stopSmoother(layout: MotionLayout): (sensors: StopSensors) => SmoothedStop {
  const forward = forwardPass(layout);
  const backward = backwardPass(layout);
  return (sensors) => {
    const first = {
      latency: sensors.latency.value,
      pitch: usualPitch,
      speedScale: 1,
      accelerationScale: 1,
    };
    const steps = smootherSteps(sensors, first.latency);
    const rough = forward(steps, sensors, first);
    if (layout.latency < 0) return backward(steps, sensors, rough);
    const second = {
      latency: rough.last.mean[layout.latency]!,
      pitch: rough.last.mean[layout.pitch]!,
      speedScale: Math.max(1, rough.speedMisfit),
      accelerationScale: Math.max(1, rough.accelerationMisfit),
    };
    const finer = smootherSteps(sensors, second.latency);
    return backward(finer, sensors, forward(finer, sensors, second));
  };
}
