import { requireRange } from '@standstill/numerics';
import type { BrakedCar } from '../stop/braked-car.ts';

/** Pa, most front line pressure that is looked for. */
const mostPressure = 60e6;
/** s, longest step, and least number of steps. */
const longestStep = 0.3;
const leastSteps = 8;

export interface Holding {
  /** v_1, m/s. */
  readonly from: number;
  /** v_2, m/s. */
  readonly to: number;
  /** a, m/s². */
  readonly deceleration: number;
}

export interface Held {
  /** m. */
  readonly distance: number;
  /** s. */
  readonly time: number;
  /** Pa, greatest front line pressure that it took. */
  readonly pressure: number;
  /** False where tires or pressure could not give it. */
  readonly isWithinReach: boolean;
}

/**
 * Slows a car at a held deceleration and warms its brakes; the foot gives whatever pressure that takes.
 *
 * Equation: Σ F_x(p) = m a − R(v) at every node, front and rear by the installed line and the friction of the moment; heat
 * by Simpson's rule over the speed, which falls in a straight line.
 * Assumes: quasi-static as `quickStop`; the pressure is there at once. Beyond the tires' peak the heat is still that of
 * the held deceleration: `isWithinReach` is false then, and the answer is no more than an upper bound.
 * Valid: deceleration 0.1 to 15 m/s².
 *
 * @param car - with set-up, road and heat taken on
 * @param holding - v_1 and v_2, m/s; a, m/s²
 * @param onStep - called after every step with s since the first touch and the speed, m/s
 * @returns distance, m; time, s; greatest pressure, Pa; whether it could be had
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 */
export function holdDeceleration(
  car: BrakedCar,
  { from, to, deceleration }: Holding,
  onStep: (time: number, speed: number) => void,
): Held {
  requireRange('speed before', from, 'm/s', 0.1, 150);
  requireRange('speed after', to, 'm/s', 0, from);
  requireRange('deceleration', deceleration, 'm/s²', 0.1, 15);
  const { front, rear } = car;
  const time = (from - to) / deceleration;
  const steps = Math.max(leastSteps, Math.ceil(time / longestStep));
  const duration = time / steps;
  let most = 0;
  let isWithinReach = true;
  const press = (speed: number): void => {
    const pressure = pressFor(car, speed, deceleration);
    most = Math.max(most, pressure);
    if (pressure >= mostPressure || front.demand > front.peak || rear.demand > rear.peak)
      isWithinReach = false;
  };
  press(from);
  for (let i = 0; i < steps; i += 1) {
    const [before, after] = [from - deceleration * duration * i, from - deceleration * duration * (i + 1)];
    const [frontBefore, rearBefore] = [front.brakesTake(deceleration), rear.brakesTake(deceleration)];
    press(Math.max(to, after));
    warm(front, duration, [before, after], [frontBefore, front.brakesTake(deceleration)]);
    warm(rear, duration, [before, after], [rearBefore, rear.brakesTake(deceleration)]);
    front.warmPads(front.heat.interfaceTemperature);
    rear.warmPads(rear.heat.interfaceTemperature);
    onStep((i + 1) * duration, Math.max(to, after));
  }
  return { distance: 0.5 * (from + to) * time, time, pressure: most, isWithinReach };
}

/** Warms an axle by the work of its brakes between two speeds, m/s, at which they take two forces, N. */
function warm(
  axle: BrakedCar['front'],
  duration: number,
  [before, after]: readonly [number, number],
  [firstForce, lastForce]: readonly [number, number],
): void {
  const [first, last] = [Math.max(0, firstForce) * before, Math.max(0, lastForce) * after];
  const middle = 0.25 * (Math.max(0, firstForce) + Math.max(0, lastForce)) * (before + after);
  axle.warm(duration, (first + 4 * middle + last) / 6, 0.5 * (last - first));
}

/**
 * Presses the brakes so that the car slows at a deceleration, and leaves both axles in that state.
 *
 * Equation: Newton's method on Σ demand(p), which rises in straight pieces, kept inside its bracket.
 *
 * @param car - with set-up and road taken on
 * @param speed - v, m/s
 * @param deceleration - a, m/s²
 * @param share - of what is wanted beyond air, rolling and grade that the brakes take, 1; the engine takes the rest
 * @returns Pa, front line pressure; 0 where nothing is asked of the brakes
 * Source: [gillespie]
 */
export function pressFor(car: BrakedCar, speed: number, deceleration: number, share?: number): number {
  const { front, rear, body, line } = car;
  car.standAt(speed);
  body.weigh(front, rear, deceleration);
  const asked = body.mass * deceleration - body.resistance();
  const wanted = share === undefined ? asked : share * asked + front.engineForce + rear.engineForce;
  let low = 0;
  let high = mostPressure;
  let pressure = 0;
  for (let pass = 0; pass < 60; pass += 1) {
    const rearPressure = line.rearAt(pressure);
    front.press(pressure, deceleration);
    rear.press(rearPressure, deceleration);
    const missing = wanted - front.demand - rear.demand;
    if (Math.abs(missing) < 1e-6 * body.mass || (pressure === 0 && missing < 0)) break;
    if (missing > 0) low = pressure;
    else high = pressure;
    const slope = front.demandRise(pressure) + rear.demandRise(rearPressure) * line.slopeAt(pressure);
    const next = slope > 0 ? pressure + missing / slope : Infinity;
    pressure = next > low && next < high ? next : 0.5 * (low + high);
  }
  front.give();
  rear.give();
  front.grip = 'rolling';
  rear.grip = 'rolling';
  return pressure;
}
