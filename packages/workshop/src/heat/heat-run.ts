import {
  boilingPointAtAge,
  padFadeTemperature,
  runSchedule,
  thermalHeadroom,
  waterShare,
} from '@standstill/braking';
import type { Headroom, ScheduleOutcome, ScheduledStop, SetUp } from '@standstill/braking';
import { footThere } from '../predict/foot-there.ts';
import type { Settled } from '../settle/settle.ts';
import { scheduleEvents } from './heat-schedule.ts';
import type { HeatSchedule, ScheduleAsked } from './heat-schedule.ts';

/** What must not get too hot, in the order in which it is told. */
export const heatThings = ['front pads', 'rear pads', 'front fluid', 'rear fluid'] as const;
export type HeatThing = (typeof heatThings)[number];

/** One schedule driven with one set-up in one draw. */
export interface HeatRun {
  readonly setUp: SetUp;
  readonly asked: ScheduleAsked;
  readonly outcome: ScheduleOutcome;
  readonly limits: Readonly<Record<HeatThing, HeatPass>>;
  /** °C, and share of water. */
  readonly boiling: number;
  readonly water: number;
  readonly headroom: Headroom | null;
}

export interface HeatPass {
  /** °C. */
  readonly highest: number;
  /** °C; Infinity where none is known. */
  readonly limit: number;
  /** First stop in which it is passed; NaN where it is not. */
  readonly stop: number;
}

/** How a schedule is to be driven. */
export interface HeatAsk {
  readonly schedule: HeatSchedule;
  readonly isSpeedAsked: boolean;
  /** Repeated stops of the job, 1. */
  readonly count: number;
  /** True where the course over time is wanted. */
  readonly isRecorded: boolean;
}

/** Most stops that are looked at for the headroom. */
export const headroomStops = 60;

/** Drives the schedule with a settled set-up, with no more force than its pedal has travel for. */
export function heatRun(settled: Settled, ask: HeatAsk): HeatRun {
  const there = footThere(settled.setUp, settled.foot.force);
  const { setUp } = there;
  const { road, speed, interval, startTemperature } = settled;
  const foot = { ...settled.foot, force: there.force };
  const asked = { speed, isSpeedAsked: ask.isSpeedAsked, foot, count: ask.count, interval };
  const rotorTemperatures = { front: startTemperature, rear: startTemperature };
  const events = scheduleEvents(ask.schedule, asked);
  const outcome = runSchedule({ setUp, road, events, rotorTemperatures, isRecorded: ask.isRecorded });
  const boiling = boilingPointAtAge(setUp.fluid);
  return {
    setUp,
    asked,
    outcome,
    boiling,
    water: waterShare(setUp.fluid),
    limits: passes(setUp, outcome, boiling),
    headroom: headroomOf(ask.schedule, { setUp, road, rotorTemperatures, ...asked }),
  };
}

function passes(
  { frontBrake, rearBrake }: SetUp,
  outcome: ScheduleOutcome,
  boiling: number,
): HeatRun['limits'] {
  const { front, rear, stops } = outcome;
  const pass = (highest: number, limit: number, of: (stop: ScheduledStop) => number): HeatPass => {
    const found = stops.find((stop) => of(stop) > limit);
    const stop = highest > limit ? (found?.number ?? stops.length) : NaN;
    return { highest, limit, stop };
  };
  const [frontFade, rearFade] = [frontBrake, rearBrake].map(({ pad }) => whole(padFadeTemperature(pad)));
  return {
    'front pads': pass(front.interface, frontFade ?? Infinity, (stop) => stop.front.interfacePeak),
    'rear pads': pass(rear.interface, rearFade ?? Infinity, (stop) => stop.rear.interfacePeak),
    'front fluid': pass(front.fluid, boiling, (stop) => stop.front.fluidPeak),
    'rear fluid': pass(rear.fluid, boiling, (stop) => stop.rear.fluidPeak),
  };
}

/** A table whose points move together fades at one temperature, whatever the rounding of a draw. */
function whole(temperature: number): number {
  return Math.round(1e6 * temperature) / 1e6;
}

function headroomOf(
  schedule: HeatSchedule,
  row: Pick<Parameters<typeof thermalHeadroom>[0], 'setUp' | 'road' | 'foot' | 'speed' | 'interval'> & {
    readonly rotorTemperatures: { readonly front: number; readonly rear: number };
  },
): Headroom | null {
  if (schedule.kind !== 'stops') return null;
  const { setUp, road, foot, speed, rotorTemperatures } = row;
  const interval = schedule.interval ?? row.interval;
  return thermalHeadroom({ setUp, road, foot, speed, interval, rotorTemperatures, mostStops: headroomStops });
}
