import { brakeTorque } from '../corner/brake-torque.ts';
import { padFriction } from '../corner/pad-friction.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { axleLoads } from '../load/axle-loads.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Tire } from '../set-up/tire.ts';
import { heldWetFactor } from '../tire/held-wet-factor.ts';
import { tirePeakForce } from '../tire/tire-peak-force.ts';
import type { StopInput } from './stop-input.ts';

type Hold = 'rolling' | 'held' | 'locked';

interface Now {
  speed: number;
  front: number;
  rear: number;
  frontHold: Hold;
  rearHold: Hold;
  deceleration: number;
}

/**
 * The same stop as `quickStop` with the heat off, marched plainly: short equal steps of time, the static functions called
 * anew in every one of them, the deceleration found by going round. Slow; for tests only. Antilock without rear limit, or
 * locked wheels.
 */
export function plainMarch(stop: StopInput, lag: number, step: number): number {
  const { setUp, foot } = stop;
  const start = linePressures({ setUp, pedalForce: 1e-9 });
  const now: Now = {
    speed: stop.speed,
    front: 0,
    rear: 0,
    frontHold: 'rolling',
    rearHold: 'rolling',
    deceleration: 0,
  };
  let distance = 0;
  for (let time = 0; now.speed > 0 && time < 200; time += step) {
    const middle = Math.min(1, foot.rampTime > 0 ? (time + step / 2) / foot.rampTime : 1);
    const asked =
      time === 0 && foot.rampTime > 0 ? start : linePressures({ setUp, pedalForce: foot.force * middle });
    const before = now.deceleration;
    now.front = asked.front + (now.front - asked.front) * Math.exp(-step / lag);
    now.rear = rearOf(stop, now.front);
    solve(stop, now);
    const lost = 0.5 * step * (before + now.deceleration);
    const part = Math.min(1, now.speed / Math.max(lost, 1e-12));
    distance += part * step * (now.speed - 0.5 * part * lost);
    now.speed -= lost;
  }
  return distance;
}

/** Pa at the rear: the pedal force that gives the front pressure is found by halving, then asked for its rear pressure. */
function rearOf({ setUp, foot }: StopInput, front: number): number {
  let low = 0;
  let high = foot.force;
  for (let i = 0; i < 40; i += 1) {
    const middle = 0.5 * (low + high);
    if (linePressures({ setUp, pedalForce: middle }).front < front) low = middle;
    else high = middle;
  }
  const at = linePressures({ setUp, pedalForce: high });
  return at.front > front ? Math.min(at.rear, (at.rear * front) / at.front) : at.rear;
}

function solve(stop: StopInput, now: Now): void {
  const { car } = stop.setUp;
  const { airDensity, grade } = stop.road;
  const slope = Math.sqrt(1 + grade * grade);
  for (let pass = 0; pass < 30; pass += 1) {
    const { deceleration, speed } = now;
    const loads = axleLoads({ car, road: stop.road, deceleration, speed: Math.max(0, speed) });
    const front = axle(stop, now, stop.setUp.frontBrake, stop.setUp.frontTire, loads.front, 'front');
    const rear = axle(stop, now, stop.setUp.rearBrake, stop.setUp.rearTire, loads.rear, 'rear');
    const drag = 0.5 * airDensity * car.dragArea * speed * speed;
    const rolling = car.rollingResistance * (loads.front + loads.rear);
    const climb = (car.mass * standardGravity * grade) / slope;
    now.deceleration += 0.9 * ((front + rear + drag + rolling + climb) / car.mass - now.deceleration);
  }
}

function axle(
  stop: StopInput,
  now: Now,
  brake: AxleBrake,
  tire: Tire,
  load: number,
  which: 'front' | 'rear',
): number {
  const { antilock, car } = stop.setUp;
  const { road } = stop;
  const surfaceFactor = road.surfaceFactor * heldWetFactor({ tire, road, speed: Math.max(0, now.speed) });
  const left = car.leftLoadShare;
  const one = (share: number): number => tirePeakForce({ tire, load: share * load, surfaceFactor });
  const peak = one(left) + one(1 - left);
  const temperature = stop.rotorTemperatures![which];
  const friction = padFriction({ pad: brake.pad, temperature });
  const inertia = which === 'front' ? car.frontWheelInertia : car.rearWheelInertia;
  const torque = brakeTorque({ brake, pressure: now[which], friction });
  const driven = which === 'front' ? car.frontDriveShare : 1 - car.frontDriveShare;
  const turning = 2 * inertia + driven * car.drivelineInertia;
  const asked =
    (2 * torque + driven * car.engineDrag) / tire.rollingRadius -
    (turning * now.deceleration) / tire.rollingRadius ** 2;
  const isActive = antilock.kind === 'threshold' && now.speed > antilock.minimumSpeed;
  const key = which === 'front' ? 'frontHold' : 'rearHold';
  const share = antilock.kind === 'threshold' ? antilock.efficiency : 1;
  if (now[key] === 'held' && (!isActive || asked < share * peak)) now[key] = 'rolling';
  if (now[key] === 'rolling' && asked > peak) now[key] = isActive ? 'held' : 'locked';
  if (now[key] === 'rolling') return asked;
  return (now[key] === 'held' ? share : tire.slideRatio) * peak;
}
