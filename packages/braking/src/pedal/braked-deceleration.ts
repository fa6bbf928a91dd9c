import { bracketedRoot } from '@standstill/numerics';
import { decelerationUnder, type Braking } from '../balance/deceleration-under.ts';
import { usualPadTemperatures, type PadTemperatures } from '../balance/pad-temperatures.ts';
import { brakeForce } from '../corner/brake-force.ts';
import { brakeTorque } from '../corner/brake-torque.ts';
import { padFriction } from '../corner/pad-friction.ts';
import { axleLoads } from '../load/axle-loads.ts';
import { heldWetFactor } from '../tire/held-wet-factor.ts';
import { tirePeakForce } from '../tire/tire-peak-force.ts';
import type { CircuitShare } from './circuit.ts';

export interface BrakedDecelerationInput extends Braking {
  /** Pa in the front brakes that work. */
  readonly frontPressure: number;
  /** Pa in the rear brakes that work. */
  readonly rearPressure: number;
  /** Part of each axle that brakes, 1; all of both where not given. */
  readonly live?: CircuitShare;
  readonly padTemperatures?: PadTemperatures;
}

/** m/s², beyond what any tire does. */
const wildest = 60;

/**
 * Answers how fast the car slows at given line pressures, no wheel braked past its tire.
 *
 * Equation: a = (Σ_axles share · min(2 T / r, 2 F_peak) + drag and rolling resistance) / m + g sin θ, with the loads at
 * that a.
 * Assumes: a driver or ABS holds each braked wheel at the peak of its tire; both wheels of an axle are equal, with the
 * load of the lighter one; no wheel inertia; steady pitch.
 * Valid: pressures 0 to 60 MPa.
 *
 * @param input - set-up, road and speed, m/s; pressures, Pa; share of each axle that brakes, 1; pad temperatures, °C
 * @returns m/s², deceleration
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * brakedDeceleration({ setUp: exampleSetUp, road: exampleRoad, frontPressure: 2e6, rearPressure: 0, live: { front: 1, rear: 0 } }) // => 2.22531
 */
export function brakedDeceleration(input: BrakedDecelerationInput): number {
  const { setUp, live = { front: 1, rear: 1 }, padTemperatures = usualPadTemperatures } = input;
  const front = live.front * axleForce(input, 'front', padTemperatures.front);
  const rear = live.rear * axleForce(input, 'rear', padTemperatures.rear);
  const under = (deceleration: number): number => {
    const loads = axleLoads({ car: setUp.car, deceleration, speed: input.speed ?? 0, road: input.road });
    const left = Math.min(setUp.car.leftLoadShare, 1 - setUp.car.leftLoadShare);
    const { road, speed = 0 } = input;
    const held = (force: number, tire: typeof setUp.frontTire, load: number, share: number) => {
      const surfaceFactor = road.surfaceFactor * heldWetFactor({ tire, road, speed });
      return Math.min(force, share * 2 * tirePeakForce({ tire, load: left * load, surfaceFactor }));
    };
    return decelerationUnder(
      input,
      held(front, setUp.frontTire, loads.front, live.front) +
        held(rear, setUp.rearTire, loads.rear, live.rear),
    );
  };
  return bracketedRoot((a) => under(a) - a, { low: -wildest, high: wildest, tolerance: 1e-10 });
}

/** N, both wheels of an axle, without the tires' limit. */
function axleForce(input: BrakedDecelerationInput, axle: 'front' | 'rear', temperature: number): number {
  const isFront = axle === 'front';
  const brake = isFront ? input.setUp.frontBrake : input.setUp.rearBrake;
  const friction = padFriction({ pad: brake.pad, temperature });
  const pressure = isFront ? input.frontPressure : input.rearPressure;
  const tire = isFront ? input.setUp.frontTire : input.setUp.rearTire;
  return 2 * brakeForce({ torque: brakeTorque({ brake, pressure, friction }), tire });
}
