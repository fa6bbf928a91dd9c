import { requireRange } from '@standstill/numerics';
import { usualPadTemperatures } from '../balance/pad-temperatures.ts';
import type { RotorTemperatures } from '../stop/stop-input.ts';
import { CourseRecorder, type AxleHighest, type HeatCourse } from './heat-course.ts';
import type { ScheduleEvent } from './schedule-event.ts';
import { ScheduleWalk, type WalkInput } from './schedule-walk.ts';
import type { ScheduledStop } from './scheduled-stop.ts';

export interface ScheduleInput extends Omit<WalkInput, 'rotorTemperatures'> {
  readonly events: readonly ScheduleEvent[];
  /** °C of the rotors at the start; `usualPadTemperatures` where left out. */
  readonly rotorTemperatures?: RotorTemperatures;
  /** True where the course over time is wanted too. */
  readonly isRecorded?: boolean;
}

export interface ScheduleOutcome {
  readonly stops: readonly ScheduledStop[];
  /** s, whole schedule. */
  readonly time: number;
  /** m. */
  readonly distance: number;
  /** The hottest of each axle, °C. */
  readonly front: AxleHighest;
  readonly rear: AxleHighest;
  /** False where a stop did not come to rest; the schedule ends with it. */
  readonly isFinished: boolean;
  /** True where the schedule asked for a speed sooner than its own acceleration regains it. */
  readonly isHurried: boolean;
  /** Over time, where asked for. */
  readonly course: HeatCourse | undefined;
}

/** Most events that a schedule may have. */
const mostEvents = 20_000;

/**
 * Answers what a schedule of stops, snubs, descents and pauses does to the brakes: temperatures over time, and for every
 * stop its distance or the pedal force that it took, and the fade.
 *
 * Equation: as `ScheduleWalk`.
 * Assumes: as `ScheduleWalk`.
 * Valid: up to 20 000 events.
 *
 * @param input - set-up, road, events; rotor temperatures, °C; whether the course is wanted
 * @returns stops; s; m; hottest of each axle, °C; course over time, s, m/s, °C
 * @throws OutOfRangeError where an input cannot be, or a rotor gets hotter than can be computed
 * Source: [limpert], [newcomb-spurr]
 * @example
 * runSchedule({ setUp: exampleSetUp, road: exampleRoad, events: heatingSnubs({ topSpeed: 60 }) }).stops.length // => 15
 */
export function runSchedule({
  events,
  rotorTemperatures,
  isRecorded,
  ...rest
}: ScheduleInput): ScheduleOutcome {
  requireRange('events of the schedule', events.length, '', 1, mostEvents);
  const walk = new ScheduleWalk();
  const recorder = isRecorded === true ? new CourseRecorder() : undefined;
  walk.begin({ ...rest, rotorTemperatures: rotorTemperatures ?? usualPadTemperatures }, recorder);
  for (const event of events) {
    walk.go(event);
    if (!walk.goesOn) break;
  }
  return {
    stops: walk.stopsDone,
    time: walk.time,
    distance: walk.distance,
    front: walk.highest.front,
    rear: walk.highest.rear,
    isFinished: walk.goesOn,
    isHurried: walk.isHurried,
    course: recorder?.course(),
  };
}
