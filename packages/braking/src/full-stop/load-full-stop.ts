import { requireRange } from '@standstill/numerics';
import { frontParts, rearParts } from '../stop/axle-parts.ts';
import { usualDriverShare } from '../stop/stop-input.ts';
import { usualAntilockControl } from './antilock-control.ts';
import type { AntilockController } from './antilock-controller.ts';
import type { FullStopInput } from './full-stop-input.ts';
import type { StopDynamics } from './stop-dynamics.ts';
import type { WheelHeat } from './wheel-heat.ts';

/** N at the pedal pad: what a foot that seeks a deceleration is taken to press with when its gain is read. */
const firmPush = 150;

/**
 * Puts a stop's set-up, road and foot into the parts of a march, and the car on the road at its speed.
 *
 * @param input - the stop
 * @param dynamics - the equations to fill
 * @param controller - the antilock to fill
 * @param heat - the rotors to warm
 * @returns s, the period of the control
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 */
export function loadFullStop(
  input: FullStopInput,
  dynamics: StopDynamics,
  controller: AntilockController,
  heat: WheelHeat,
): number {
  const { setUp, road, speed } = input;
  const control = input.antilockControl ?? usualAntilockControl;
  dynamics.body.take(setUp, road, speed);
  dynamics.wheels.take(setUp, road, speed);
  loadFoot(input, dynamics, control.dumpTime);
  loadDriver(input, dynamics);
  heat.take(input, dynamics);
  roll(dynamics, speed);
  controller.take(setUp.antilock, control, dynamics.wheels);
  return control.samplePeriod;
}

function loadFoot({ setUp, road, foot }: FullStopInput, dynamics: StopDynamics, dumpTime: number): void {
  const { body, wheels } = dynamics;
  dynamics.foot.take(setUp, foot, 1);
  const pressure = dynamics.foot.pressureFor(firmPush);
  let force = 0;
  for (let wheel = 0; wheel < 4; wheel += 1) {
    const brake = wheel < 2 ? frontParts(setUp, road).brake : rearParts(setUp, road).brake;
    const gain = wheels.each[wheel]!.gain * brake.pad.frictions[0]!;
    force += (gain * pressure) / wheels.each[wheel]!.radius;
  }
  const perDeceleration = force > 0 ? (firmPush * body.mass) / force : firmPush;
  dynamics.foot.take(setUp, foot, perDeceleration);
  dynamics.lines.take(setUp, strongestForce(foot), dumpTime, wheels);
}

function strongestForce(foot: FullStopInput['foot']): number {
  if (foot.kind === 'ramp') return foot.force;
  if (foot.kind === 'deceleration') return Math.min(foot.greatestForce, 2 * firmPush);
  let most = 0;
  for (let i = 0; i < foot.forces.length; i += 1) most = Math.max(most, foot.forces[i] ?? 0);
  return most;
}

function loadDriver({ setUp, driverShare, lockedWheels }: FullStopInput, { driver }: StopDynamics): void {
  driver.acts = setUp.antilock.kind === 'none' && lockedWheels !== true;
  driver.share = requireRange('share of the lock limit', driverShare ?? usualDriverShare, '', 0.1, 1);
  driver.frontPeakSlip = setUp.frontTire.peakSlip;
  driver.rearPeakSlip = setUp.rearTire.peakSlip;
  driver.rearIsKept = setUp.antilock.electronicRearLimit;
}

/** The car rolling freely; driven wheels slip by what the engine holds back. */
function roll({ car, wheels, body }: StopDynamics, speed: number): void {
  car.open(speed);
  for (let at = 0; at < 4; at += 1) {
    const wheel = wheels.each[at]!;
    const load = (at < 2 ? body.frontStill : body.rearStill) * wheel.loadShare;
    const stiffness = wheels.peakOf(at, load, speed) * wheel.curve.stiffness;
    wheel.startRolling(
      speed,
      stiffness > 0 ? Math.min(0.02, wheel.engineDrag / (wheel.radius * stiffness)) : 0,
    );
  }
}
