import {
  bedIn,
  burnish,
  coolDown,
  equalStops,
  heatingSnubs,
  hotStops,
  laps,
  mountainDescent,
} from '@standstill/braking';
import type { BrakingPoint, Foot, ScheduleEvent } from '@standstill/braking';
import { requireRange } from '@standstill/numerics';
import { plural } from '../words/plural.ts';
import type { Speaker } from '../words/speaker.ts';

/** Which schedule is asked about; SI, what is left out is as the job says or as stated here. */
export type HeatSchedule =
  | { readonly kind: 'stops'; readonly count?: number; readonly interval?: number }
  | { readonly kind: 'burnish' | 'hot-stops' | 'heating-snubs' | 'bed-in' }
  | {
      readonly kind: 'descent';
      /** m, height lost; 600 where left out. */
      readonly drop?: number;
      /** Fall over run, 1; 8 % where left out. */
      readonly grade?: number;
      /** 1, of what grade asks beyond air and rolling; 0.6 where left out. */
      readonly brakeShare?: number;
    }
  | { readonly kind: 'laps'; readonly points: readonly BrakingPoint[]; readonly count?: number };

export type HeatScheduleKind = HeatSchedule['kind'];

/** What of a set-up's question the events are made of. */
export interface ScheduleAsked {
  /** m/s, of the job or asked for. */
  readonly speed: number;
  /** True where a speed was asked for, so that a schedule with a speed of its own takes it. */
  readonly isSpeedAsked: boolean;
  readonly foot: Foot;
  readonly count: number;
  /** s. */
  readonly interval: number;
}

/** m/s that any car is taken to reach: snubs are then from 120 km/h. */
const usualTopSpeed = 60;
/** m/s of a descent where none is asked for: 50 km/h. */
const descentSpeed = 50 / 3.6;
/** s of standing after the schedule, in which the fluid gets hottest. */
const soak = { kind: 'parked', time: 900 } as const;
const usualLaps = 5;
const descent = { drop: 600, grade: 0.08, brakeShare: 0.6 } as const;

/** The events of a schedule, each with what the brakes do afterwards. */
export function scheduleEvents(schedule: HeatSchedule, asked: ScheduleAsked): readonly ScheduleEvent[] {
  const { speed, foot } = asked;
  switch (schedule.kind) {
    case 'stops': {
      const { count = asked.count, interval = asked.interval } = schedule;
      return [...equalStops({ count, speed, interval, foot }), soak];
    }
    case 'burnish':
      return burnish();
    case 'heating-snubs':
      return [...heatingSnubs({ topSpeed: usualTopSpeed }), soak];
    case 'hot-stops':
      return [...hotStops({ topSpeed: usualTopSpeed, foot }), soak];
    case 'bed-in':
      return bedIn();
    case 'descent': {
      const at = asked.isSpeedAsked ? speed : descentSpeed;
      return mountainDescent({ ...descent, ...schedule, speed: at, foot });
    }
    case 'laps': {
      const count = requireRange('laps', schedule.count ?? usualLaps, '', 1, 200);
      return [...laps(schedule.points, count), ...coolDown({ speed: 20, driving: 120, parked: soak.time })];
    }
  }
}

/** `8 stops from 60 mph every 35 s`. */
export function scheduleText(schedule: HeatSchedule, asked: ScheduleAsked, say: Speaker): string {
  switch (schedule.kind) {
    case 'stops': {
      const { count = asked.count, interval = asked.interval } = schedule;
      const every = count > 1 ? ` every ${say.plain(interval, 'time')}` : '';
      return `${plural(count, 'stop')} from ${say.plain(asked.speed, 'speed')}${every}`;
    }
    case 'burnish':
      return 'the burnish of FMVSS 135 (200 stops)';
    case 'heating-snubs':
      return 'the heating snubs of FMVSS 135 (15 snubs)';
    case 'hot-stops':
      return 'the hot stops of FMVSS 135 (one cold stop, 15 snubs, 2 hot stops)';
    case 'bed-in':
      return 'a common bed-in (15 snubs)';
    case 'descent': {
      const { drop = descent.drop, grade = descent.grade, brakeShare = descent.brakeShare } = schedule;
      const speed = say.plain(asked.isSpeedAsked ? asked.speed : descentSpeed, 'speed');
      const height = say.plain(drop, 'stopping-distance');
      return `a descent of ${height} at ${say.plain(grade, 'share')} and ${speed}, ${say.plain(brakeShare, 'share')} of it by the brakes, and a stop`;
    }
    case 'laps': {
      const { points, count = usualLaps } = schedule;
      return `${plural(count, 'lap')} of ${plural(points.length, 'braking point')}`;
    }
  }
}
