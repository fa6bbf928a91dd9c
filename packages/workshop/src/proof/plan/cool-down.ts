import { runSchedule, usualRegain } from '@standstill/braking';
import type { ScheduleEvent, ScheduledStop } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import { drawSheet } from '../../draws/draw-sheet.ts';
import { intervalOf } from '../../draws/interval-of.ts';
import { knownsOf } from '../../draws/knowns-of.ts';
import { orNone } from '../../draws/or-none.ts';
import type { Job } from '../../job/job.ts';
import { footThere } from '../../predict/foot-there.ts';
import { settle } from '../../settle/settle.ts';
import type { Settled } from '../../settle/settle.ts';
import type { Estimate } from '../../results/estimate.ts';
import { cruise, longestInterval, mostWarmUps, turnAround } from './test-practice.ts';

/** What the heat model says of a row of test stops with one set-up. */
export interface CoolDown {
  readonly setUp: string;
  /** s from one stop to the next, so that the hottest rotor is back in the window. */
  readonly interval: Estimate;
  /** Stops from cold until the hottest rotor starts within the window; null where it never does. */
  readonly warmUps: number | null;
  /** False where an hour of driving does not bring it back. */
  readonly isReached: boolean;
  /** m, a stop in the row; central values. */
  readonly distance: number;
}

export interface CoolDownInput {
  readonly setUp: string;
  /** m/s. */
  readonly speed: number;
  /** °C of the hottest rotor at the start of a stop. */
  readonly window: { readonly low: number; readonly high: number };
  readonly draws: number;
  readonly seed: number;
}

/**
 * Answers how long the brakes of a set-up take between test stops until the hottest rotor is back in the window, driving
 * on and not parked, and how many stops warm them up.
 *
 * Equation: as `runSchedule`: stops from the air's temperature on, each followed by a turn of 60 s at 18 m/s at least and
 * by more of it until the hottest ring is at the upper end of the window; the longest interval of the row
 * Assumes: the foot of the job; no braking on the way back.
 *
 * @param job - the job
 * @param input - set-up; speed, m/s; window, °C; draws, seed
 * @returns interval, s, and warm-ups; null where the set-up does not stop or is outside what the formulas hold for
 */
export function coolDownOf(job: Job, { setUp, speed, window, draws, seed }: CoolDownInput): CoolDown | null {
  const row = (settled: Settled, count = rowLength): readonly ScheduledStop[] =>
    rowOf(settled, { speed, high: window.high, count });
  const pair = orNoRow(() => row(settle(job, setUp), 2));
  if (pair?.length === 2 && longestGap(pair) >= longestInterval) return neverCools(setUp, pair);
  const central = orNoRow(() => row(settle(job, setUp)));
  if (central === null || central.length < rowLength) return null;
  const sheet = drawSheet({ knowns: knownsOf(job, [setUp]), draws, seed });
  const drawn = sheet.flatMap((draw) => {
    const stops = orNone(() => row(settle(job, setUp, draw)));
    return stops === null || stops.length < rowLength ? [] : [longestGap(stops)];
  });
  const value = longestGap(central);
  const warm = central.findIndex((stop) => hottestAtStart(stop) >= window.low);
  return {
    setUp,
    interval: intervalOf(value, Float64Array.from(drawn)),
    warmUps: warm < 0 ? null : warm,
    isReached: true,
    distance: central[rowLength - 1]?.distance ?? NaN,
  };
}

/** Stops that are looked at: warm-ups and a few more, after which the row repeats itself. */
const rowLength = mostWarmUps + 4;

interface Row {
  /** m/s. */
  readonly speed: number;
  /** °C. */
  readonly high: number;
  readonly count: number;
}

/** Nothing more needs to be driven to know that it waits for ever. */
function neverCools(setUp: string, pair: readonly ScheduledStop[]): CoolDown {
  const interval = { value: longestInterval, low: longestInterval, high: longestInterval };
  return { setUp, interval, warmUps: 0, isReached: false, distance: pair[0]?.distance ?? NaN };
}

function rowOf(settled: Settled, { speed, high, count }: Row): readonly ScheduledStop[] {
  const { setUp, force } = footThere(settled.setUp, settled.foot.force);
  const stop: ScheduleEvent = { kind: 'stop', from: speed, foot: { ...settled.foot, force } };
  const to = Math.min(cruise, speed);
  const between: readonly ScheduleEvent[] = [
    { kind: 'regain', to, rate: usualRegain, interval: turnAround },
    { kind: 'regain', to, coolTo: high },
    { kind: 'accelerate', to: speed, rate: usualRegain },
  ];
  const events = Array.from({ length: count }, (_, at) => (at === 0 ? [stop] : [...between, stop])).flat();
  const { airTemperature } = settled.road;
  const { stops, isFinished } = runSchedule({
    setUp,
    road: settled.road,
    events,
    rotorTemperatures: { front: airTemperature, rear: airTemperature },
  });
  return isFinished ? stops : [];
}

function longestGap(stops: readonly ScheduledStop[]): number {
  const gaps = stops.slice(1).map(({ startTime }, index) => startTime - (stops[index]?.startTime ?? 0));
  return Math.max(turnAround, ...gaps);
}

function hottestAtStart({ front, rear }: ScheduledStop): number {
  return Math.max(front.bulkAtStart, rear.bulkAtStart);
}

function orNoRow<T>(answer: () => T): T | null {
  try {
    return answer();
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
