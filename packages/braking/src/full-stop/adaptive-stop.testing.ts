import * as mathjs from 'mathjs';
import { padFriction } from '../corner/pad-friction.ts';
import { brakeTorque } from '../corner/brake-torque.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { masterCylinderGains } from '../foot-to-pressure/master-cylinder-gains.ts';
import { pressuresFromMasterForce } from '../foot-to-pressure/pressures-from-master-force.ts';
import { axleLoads } from '../load/axle-loads.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { StopInput } from '../stop/stop-input.ts';
import { lineLag } from '../stop/pressure-lag.ts';
import { magicFormula } from '../tire/magic-formula.ts';
import { slipCurve } from '../tire/slip-curve.ts';
import { heldWetFactor } from '../tire/held-wet-factor.ts';
import { tirePeakForce } from '../tire/tire-peak-force.ts';

/** The package's types leave its solver out. */
type SolveOde = (
  slopes: (time: number, state: number[]) => number[],
  span: readonly [number, number],
  start: number[],
  options: { method: 'RK45'; tol: number; firstStep: number; maxStep: number; maxIter: number },
) => { t: number[]; y: number[][] };
const { solveODE } = mathjs as unknown as { solveODE: SolveOde };

/** s, booster lags, and the least that a line has: those of the full stop, written out again. */
const boosterLag = { none: 0, vacuum: 0.05, hydraulic: 0.02 } as const;
const leastLineLag = 0.002;
const megapascal = 1e6;

/** s, a stretch that is solved in one go; within it a wheel may come to stand. */
const stretch = 0.05;
/** Where the first wheel's rim stands in the state, and how many figures a wheel has. */
const firstRim = 5;
const perWheel = 3;

/**
 * How far the car has come after `time` seconds, m, by a general-purpose adaptive solver (Dormand and Prince) on equations
 * put together anew from the published functions; what it has left of speed is taken to be lost as it was losing it. Where a
 * wheel comes to stand the solver starts anew, because it cannot go across a slope that jumps. No antilock, no driver,
 * pads of one friction, no wheel that turns again once it stands.
 */
export function adaptiveStop(stop: StopInput, time: number): number {
  const stands = [false, false, false, false];
  const slopes = equations(stop, stands);
  let now = 0;
  let state = atFirstTouch(stop);
  while (now < time - 1e-12) {
    let end = Math.min(time, now + stretch, stop.foot.rampTime > now ? stop.foot.rampTime : Infinity);
    let after = solved(slopes, now, end, state);
    const locking = firstToStand(state, after, stands);
    if (locking >= 0) {
      [end, after] = untilItStands(slopes, now, end, state, after, locking);
      after[firstRim + perWheel * locking] = 0;
      stands[locking] = true;
    }
    now = end;
    state = after;
  }
  const left = state[0]!;
  return state[1]! + (left * Math.abs(left)) / (2 * -slopes(time, state)[0]!);
}

type Slopes = (time: number, state: number[]) => number[];

function solved(slopes: Slopes, from: number, to: number, state: number[]): number[] {
  const options = {
    method: 'RK45',
    tol: 1e-3,
    firstStep: Math.min(1e-4, to - from),
    maxStep: 0.01,
    maxIter: 50_000,
  } as const;
  return solveODE(slopes, [from, to], state, options).y.at(-1)!;
}

/** The rolling wheel whose rim has fallen through zero first, by straight lines; -1 where none has. */
function firstToStand(
  before: readonly number[],
  after: readonly number[],
  stands: readonly boolean[],
): number {
  let first = -1;
  let soonest = 1;
  stands.forEach((isStanding, at) => {
    const was = before[firstRim + perWheel * at]!;
    const is = after[firstRim + perWheel * at]!;
    if (isStanding || is >= 0 || was / (was - is) > soonest) return;
    first = at;
    soonest = was / (was - is);
  });
  return first;
}

/** s and the state where a wheel's rim comes to zero. */
function untilItStands(
  slopes: Slopes,
  from: number,
  to: number,
  before: number[],
  after: number[],
  wheel: number,
): [number, number[]] {
  const rim = firstRim + perWheel * wheel;
  let low = from;
  let high = to;
  let state = after;
  for (let pass = 0; pass < 40 && high - low > 1e-9; pass += 1) {
    const middle = 0.5 * (low + high);
    state = solved(slopes, from, middle, before);
    if (state[rim]! > 0) low = middle;
    else high = middle;
  }
  return [0.5 * (low + high), [...state]];
}

/** Speed, place, pitch and its rate, master pressure in MPa; of each wheel: speed of its rim, slip, pressure in MPa. */
function atFirstTouch({ speed }: StopInput): number[] {
  const wheel = [speed, 0, 0];
  return [speed, 0, 0, 0, 0, ...wheel, ...wheel, ...wheel, ...wheel];
}

function equations(stop: StopInput, stands: readonly boolean[]): Slopes {
  const { setUp, road } = stop;
  const { car } = setUp;
  const arm = car.centerOfGravityHeight;
  const inertia = car.mass * car.wheelbase ** 2 * car.frontLoadShare * (1 - car.frontLoadShare);
  const natural = 2 * Math.PI * car.pitchFrequency;
  const weight = (car.mass * standardGravity) / Math.sqrt(1 + road.grade ** 2);
  const wheels = [0, 1, 2, 3].map((at) => wheelOf(stop, at));
  return (time, state) => {
    const [body, , pitch, pitchRate] = state as [number, number, number, number];
    const speed = body - ((arm * arm * car.mass) / inertia / natural ** 2) * pitchRate;
    const sensed = pitch + ((2 * car.pitchDamping) / natural) * pitchRate;
    const loads = axleLoads({ car, road, speed: Math.max(0, speed), deceleration: sensed });
    const { masterRate, front, rear } = lines(stop, time, state[4]!);
    let tires = 0;
    const rates = wheels.flatMap((wheel, at) => {
      const axleLoad = at < 2 ? loads.front : loads.rear;
      const own = state.slice(5 + 3 * at, 8 + 3 * at) as [number, number, number];
      const { force, slopes } = wheel(own, speed, axleLoad, at < 2 ? front : rear, stands[at]!);
      tires += force;
      return slopes;
    });
    const air = 0.5 * road.airDensity * car.dragArea * speed ** 2;
    const along = tires + air + car.rollingResistance * (loads.front + loads.rear);
    const slowing = (along + weight * road.grade) / car.mass;
    const bend = natural ** 2 * (along / car.mass - pitch) - 2 * car.pitchDamping * natural * pitchRate;
    return [-slowing, speed, pitchRate, bend, masterRate, ...rates];
  };
}

/** MPa/s of the master cylinder; MPa at its outlets. */
function lines(
  { setUp, foot }: StopInput,
  time: number,
  master: number,
): { masterRate: number; front: number; rear: number } {
  const risen = foot.rampTime > 0 ? Math.min(1, Math.max(1e-9, time / foot.rampTime)) : 1;
  const asked = linePressures({ setUp, pedalForce: foot.force * risen }).front / megapascal;
  const lag = boosterLag[setUp.booster.kind];
  const given = Math.max(0, lag > 0 ? master : asked);
  const { masterCylinder, rearValve } = setUp;
  const masterForce = (given * megapascal) / masterCylinderGains(masterCylinder).front;
  const { rear } = pressuresFromMasterForce({ masterCylinder, rearValve, masterForce });
  return { masterRate: lag > 0 ? (asked - master) / lag : 0, front: given, rear: rear / megapascal };
}

type WheelEquations = (
  own: readonly [number, number, number],
  speed: number,
  axleLoad: number,
  line: number,
  isStanding: boolean,
) => { force: number; slopes: number[] };

function wheelOf({ setUp, road, foot, rotorTemperatures }: StopInput, at: number): WheelEquations {
  const { car } = setUp;
  const isFront = at < 2;
  const tire = isFront ? setUp.frontTire : setUp.rearTire;
  const brake = isFront ? setUp.frontBrake : setUp.rearBrake;
  const driven = (isFront ? car.frontDriveShare : 1 - car.frontDriveShare) / 2;
  const inertia = (isFront ? car.frontWheelInertia : car.rearWheelInertia) + driven * car.drivelineInertia;
  const share = at % 2 === 0 ? car.leftLoadShare : 1 - car.leftLoadShare;
  const held = linePressures({ setUp, pedalForce: foot.force });
  const lag = Math.max(leastLineLag, lineLag(brake, setUp.fluid, isFront ? held.front : held.rear));
  const temperature = isFront ? rotorTemperatures!.front : rotorTemperatures!.rear;
  const friction = padFriction({ pad: brake.pad, temperature });
  const curve = slipCurve(tire);
  const radius = tire.rollingRadius;
  return ([rim, slip, pressure], speed, axleLoad, line, isStanding) => {
    const water = heldWetFactor({ tire, road, speed: Math.max(0, speed) });
    const peak = tirePeakForce({ tire, load: share * axleLoad, surfaceFactor: road.surfaceFactor * water });
    const force = peak * magicFormula(curve, Math.max(-1, Math.min(1, slip)));
    const torque = brakeTorque({ brake, pressure: Math.max(0, pressure) * megapascal, friction });
    const spin = (radius * (radius * force - torque - driven * car.engineDrag)) / inertia;
    const rimRate = isStanding ? Math.max(0, spin) : spin;
    const slipRate = (speed - rim - Math.abs(speed) * slip) / tire.relaxationLength;
    return { force, slopes: [rimRate, slipRate, (line - pressure) / lag] };
  };
}
