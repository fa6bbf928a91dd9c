import { requireRange } from '@standstill/numerics';
import { usualPadTemperatures } from '../balance/pad-temperatures.ts';
import { boilingPointAtAge } from '../heat/fluid/boiling-point.ts';
import { padFadeTemperature } from '../heat/pad-fade-temperature.ts';
import type { Foot } from '../set-up/foot.ts';
import { usualRegain } from '../stop/repeated-stops.ts';
import type { RotorTemperatures } from '../stop/stop-input.ts';
import { ScheduleWalk, type WalkInput } from './schedule-walk.ts';

export interface HeadroomInput extends Omit<WalkInput, 'rotorTemperatures'> {
  readonly rotorTemperatures?: RotorTemperatures;
  readonly foot: Foot;
  /** v_0, m/s, of every stop. */
  readonly speed: number;
  /** s from first touch to first touch. */
  readonly interval: number;
  /** m/s²; `usualRegain` where left out. */
  readonly regain?: number;
  /** 1, most stops that are looked at; 60 where left out. */
  readonly mostStops?: number;
}

/** What gets too hot in a row of stops. */
export type TooHot = 'front pads' | 'rear pads' | 'front fluid' | 'rear fluid' | 'car does not stop';

export interface Headroom {
  /** 1, stops that can be made before; `mostStops` where nothing gets too hot within them. */
  readonly stops: number;
  /** What gets too hot first; null where nothing does. */
  readonly first: TooHot | null;
  /** °C, the limit that it passes; NaN where none is. */
  readonly limit: number;
}

/**
 * Answers how many equal stops the brakes bear before their fluid boils or their pads fade.
 *
 * Equation: stops as `ScheduleWalk`; limits by `boilingPointAtAge` and `padFadeTemperature`.
 * Assumes: as these. The fluid is looked at until the next stop, the pads at the rotor's rubbing face; what boils while the
 * car stands afterwards is another question.
 * Valid: up to 200 stops.
 *
 * @param input - set-up, road, foot; v_0, m/s; interval, s; acceleration, m/s²; most stops, 1
 * @returns stops, what is too hot first, its limit, °C
 * @throws OutOfRangeError where an input cannot be
 * Source: [fmvss-116], [common-practice]
 * @example
 * thermalHeadroom({ setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 50, interval: 30 }).first // => 'front pads'
 */
export function thermalHeadroom(input: HeadroomInput): Headroom {
  const { setUp, foot, speed, interval, regain: rate = usualRegain } = input;
  const most = requireRange('most stops', input.mostStops ?? 60, '', 1, 200);
  const walk = new ScheduleWalk();
  walk.begin({ ...input, rotorTemperatures: input.rotorTemperatures ?? usualPadTemperatures });
  const boiling = boilingPointAtAge(setUp.fluid);
  const [front, rear] = [padFadeTemperature(setUp.frontBrake.pad), padFadeTemperature(setUp.rearBrake.pad)];
  for (let stops = 0; stops < most; stops += 1) {
    walk.go({ kind: 'stop', from: speed, foot });
    if (!walk.goesOn) return { stops, first: 'car does not stop', limit: NaN };
    if (walk.highest.front.interface > front) return { stops, first: 'front pads', limit: front };
    if (walk.highest.rear.interface > rear) return { stops, first: 'rear pads', limit: rear };
    walk.go({ kind: 'regain', to: speed, rate, interval });
    if (walk.highest.front.fluid > boiling) return { stops, first: 'front fluid', limit: boiling };
    if (walk.highest.rear.fluid > boiling) return { stops, first: 'rear fluid', limit: boiling };
  }
  return { stops: most, first: null, limit: NaN };
}
