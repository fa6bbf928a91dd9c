import { requireRange } from '@standstill/numerics';
import { usualPadTemperatures } from '../balance/pad-temperatures.ts';
import { ScheduleWalk } from '../schedule/schedule-walk.ts';
import type { StopSummary } from './quick-stop.ts';
import type { RotorTemperatures, StopInput } from './stop-input.ts';

export interface RepeatedStopsInput extends StopInput {
  /** How many stops. */
  readonly count: number;
  /** s from the first touch of one stop to that of the next. */
  readonly interval: number;
  /** m/s² at which the speed is regained; `usualRegain` where left out. */
  readonly regain?: number;
}

export interface RepeatedStop {
  /** 1 for the first. */
  readonly number: number;
  /** °C, rings at the first touch, their heat spread evenly. */
  readonly bulkAtStart: RotorTemperatures;
  readonly stop: StopSummary;
  /** 1, mean deceleration over that of the first stop: below 1 the brakes have faded. */
  readonly shareOfFirst: number;
  /** °C, mean of the pads at rest. */
  readonly pads: RotorTemperatures;
  /** °C, hottest fluid behind the pistons from the first touch to the next one; after the last stop while parked. */
  readonly fluid: RotorTemperatures;
}

/** m/s² at which a road car regains its speed between stops (assumed). */
export const usualRegain = 2.5;
/** s that the car stands after the last stop, its fluid still taking up heat. */
const soakTime = 900;

/**
 * Answers how a row of equal stops goes, the brakes carrying their heat from one to the next: fade per stop, and how hot the
 * fluid gets.
 *
 * Equation: as `ScheduleWalk`: each stop as `quickStop` with the heat of whole corners (`CornerState`); between them the
 * speed is regained at 2.5 m/s² and held. After the last stop the car stands for 15 minutes.
 * Assumes: as `ScheduleWalk`. Where the interval is too short for that acceleration, the speed is regained within it all
 * the same: then the row is driven faster than a car could.
 * Valid: 1 to 200 stops; interval up to an hour. Where a stop does not come to rest, the row ends with it.
 *
 * @param input - as for `quickStop`; count of stops; interval from first touch to first touch, s; acceleration, m/s²
 * @returns per stop: its number, temperatures, °C, its summary and its deceleration over the first's
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert], [newcomb-spurr]
 * @example
 * repeatedStops({ setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8, count: 3, interval: 45 }).length // => 3
 */
export function repeatedStops(input: RepeatedStopsInput): readonly RepeatedStop[] {
  const count = requireRange('number of stops', input.count, '', 1, 200);
  const interval = requireRange('interval', input.interval, 's', 0, 3600);
  const rate = requireRange('acceleration', input.regain ?? usualRegain, 'm/s²', 0.1, 20);
  const { foot, speed } = input;
  const walk = new ScheduleWalk();
  walk.begin({ ...input, rotorTemperatures: input.rotorTemperatures ?? usualPadTemperatures });
  const summaries: StopSummary[] = [];
  while (summaries.length < count && walk.goesOn) {
    walk.go({ kind: 'stop', from: speed, foot });
    if (walk.lastSummary !== undefined) summaries.push(walk.lastSummary);
    if (!walk.goesOn) break;
    if (summaries.length < count) walk.go({ kind: 'regain', to: speed, rate, interval });
    else walk.go({ kind: 'parked', time: soakTime });
  }
  return walk.stopsDone.flatMap(({ number, front, rear, shareOfFirst }, index) => {
    const stop = summaries[index];
    if (stop === undefined) return [];
    return {
      number,
      bulkAtStart: { front: front.bulkAtStart, rear: rear.bulkAtStart },
      stop,
      shareOfFirst,
      pads: { front: front.padAtEnd, rear: rear.padAtEnd },
      fluid: { front: front.fluidPeak, rear: rear.fluidPeak },
    };
  });
}
