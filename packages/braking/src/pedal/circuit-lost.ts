import { boreArea } from '../foot-to-pressure/bore-area.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { axleVolumes } from '../travel/axle-volumes.ts';
import { pedalTravel } from '../travel/pedal-travel.ts';
import { circuitShare, type Circuit, type CircuitShare } from './circuit.ts';
import { chamberStrokes, type TandemStrokes } from './tandem-strokes.ts';

export interface CircuitLostInput {
  readonly setUp: SetUp;
  /** The circuit that holds no pressure. */
  readonly lost: Circuit;
  /** F_p, N at the pedal pad. */
  readonly pedalForce: number;
  /** Of a tandem cylinder; half of the stroke each where not given. */
  readonly strokes?: TandemStrokes | undefined;
}

export interface CircuitLost {
  /** Part of each axle that still brakes, 1. */
  readonly live: CircuitShare;
  /** m at the pedal pad that the pressure asks for, also where the pedal does not have it. */
  readonly travel: number;
  /** m at the pedal pad over the same push with both circuits. */
  readonly extraTravel: number;
  /** m at the pedal pad left to the floor; negative where it is not there. */
  readonly travelLeft: number;
  /** m left in the live chamber; negative where it bottoms. */
  readonly strokeReserve: number;
  /** True where the pressure of this force is not there. */
  readonly bottomed: boolean;
  /** Pa in the front brakes that still work; 0 where none does. */
  readonly frontPressure: number;
  /** Pa in the rear brakes that still work; 0 where none does. */
  readonly rearPressure: number;
}

/**
 * Answers what a push does with one circuit lost: how much further the pedal goes, and what is left.
 *
 * Equation: tandem: rod = s_dead + V_live / A; balance bar: rod = b_dead s + b_live V_live / A_live; then
 * s = i_p rod + s_0 + c F_p. Pressure in the live circuit as with both.
 * Assumes: the dead chamber bottoms before the live circuit holds pressure; the bar swings until the dead cylinder
 * bottoms (a stop of its own would come sooner); the rear valve works as before (no bypass); fluid and trapped air lie
 * evenly over the corners. Springs are not counted.
 * Valid: as `pedalTravel`.
 *
 * @param input - set-up; lost circuit; F_p, pedal force, N; single strokes of a tandem cylinder, m
 * @returns shares that brake, 1; travel, what is more of it and what is left, m; stroke left, m; pressures, Pa
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * circuitLost({ setUp: exampleSetUp, lost: 'rear', pedalForce: 200 }).travel // => 0.106415
 */
export function circuitLost({ setUp, lost, pedalForce, strokes }: CircuitLostInput): CircuitLost {
  const dead = circuitShare(lost);
  const live = { front: 1 - dead.front, rear: 1 - dead.rear };
  const { front, rear } = linePressures({ setUp, pedalForce });
  const { fluid, frontBrake, rearBrake, pedal } = setUp;
  const volume =
    live.front * axleVolumes({ brake: frontBrake, fluid, pressure: front }).total +
    live.rear * axleVolumes({ brake: rearBrake, fluid, pressure: rear }).total;
  const { rod, strokeReserve } = rodTravel({ setUp, lost, strokes }, volume);
  const { ratio, freePlay, flex, availableTravel } = pedal;
  const travel = pedalForce > 0 ? ratio * rod + freePlay + flex * pedalForce : 0;
  return {
    live,
    travel,
    extraTravel: travel - pedalTravel({ setUp, pedalForce }).travel,
    travelLeft: availableTravel - travel,
    strokeReserve,
    bottomed: strokeReserve < 0 || travel > availableTravel,
    frontPressure: live.front > 0 ? front : 0,
    rearPressure: live.rear > 0 ? rear : 0,
  };
}

interface RodTravel {
  /** m. */
  readonly rod: number;
  /** m left in the live chamber. */
  readonly strokeReserve: number;
}

function rodTravel(
  { setUp, lost, strokes }: Pick<CircuitLostInput, 'setUp' | 'lost' | 'strokes'>,
  volume: number,
): RodTravel {
  const { masterCylinder } = setUp;
  if (masterCylinder.kind === 'tandem') {
    const chambers = chamberStrokes(masterCylinder, lost, strokes);
    const used = volume / boreArea(masterCylinder.bore);
    return { rod: chambers.dead + used, strokeReserve: chambers.live - used };
  }
  const { frontBore, rearBore, frontForceShare, stroke } = masterCylinder;
  const deadShare = lost === 'front' ? frontForceShare : 1 - frontForceShare;
  const used = volume / boreArea(lost === 'front' ? rearBore : frontBore);
  return { rod: deadShare * stroke + (1 - deadShare) * used, strokeReserve: stroke - used };
}
