import type { BrakedCar } from './braked-car.ts';

/** Head room over the peak of the tires, 1. */
const headRoom = 1.02;
/** An axle that asks less than its want over this is taken to have no brake. */
const mostFactor = 1e6;

/**
 * Makes both brakes so much stronger, by one factor, that the held pressure brings both axles to their tires' peak; the
 * off state of the effect `torque`. Brakes that are strong enough stay as they are.
 *
 * Equation: factor = max(1, wanted / asked of each axle); with ideal balance of both axles together; wanted = 1.02
 * (F_peak + (2 J + J_d) a / r²) − M_e / r at the strongest deceleration, at the speed of the stop and at rest.
 * Assumes: friction as at the start. A pressure that would not even push the pads out is taken to push them.
 *
 * @param car - the car, its axles filled; changed in place
 * @param frontPressure - p, front line pressure held, Pa
 * @param speed - v_0, m/s
 * Source: [geometry]
 */
export function strengthenBrakes(car: BrakedCar, frontPressure: number, speed: number): void {
  const { front, rear } = car;
  if (frontPressure <= front.pushOutPressure) front.pushOutPressure = 0;
  if (car.line.rearAt(frontPressure) <= rear.pushOutPressure) rear.pushOutPressure = 0;
  const factor = Math.max(1, wantedFactor(car, frontPressure, 0), wantedFactor(car, frontPressure, speed));
  front.forcePerPressure *= factor;
  rear.forcePerPressure *= factor;
}

function wantedFactor(car: BrakedCar, frontPressure: number, speed: number): number {
  const { front, rear, line } = car;
  const deceleration = loadAtPeak(car, speed);
  front.press(frontPressure, 0);
  rear.press(line.rearAt(frontPressure), 0);
  const frontWanted = headRoom * (front.peak + front.inertia * deceleration) - front.engineForce;
  const rearWanted = headRoom * (rear.peak + rear.inertia * deceleration) - rear.engineForce;
  const frontAsked = front.demand - front.engineForce;
  const rearAsked = rear.demand - rear.engineForce;
  if (car.keeper.balanced) return ratio(frontWanted + rearWanted, frontAsked + rearAsked);
  return Math.max(ratio(frontWanted, frontAsked), ratio(rearWanted, rearAsked));
}

/** m/s² with both axles at their peak; leaves the axles loaded so. */
function loadAtPeak(car: BrakedCar, speed: number): number {
  const { front, rear, body } = car;
  car.standAt(speed);
  let deceleration = 0;
  for (let pass = 0; pass < 5; pass += 1) {
    body.weigh(front, rear, deceleration);
    deceleration = (front.peak + rear.peak + body.resistance()) / body.mass;
  }
  return deceleration;
}

function ratio(wanted: number, asked: number): number {
  return asked > wanted / mostFactor ? wanted / asked : 1;
}
