import { requireRange } from '@standstill/numerics';
import type { ScheduleEvent } from '../schedule-event.ts';

export interface HeatingSnubsInput {
  /** m/s that the car can reach. */
  readonly topSpeed: number;
}

/** m/s, share of the top speed, m/s², s and count of the schedule. */
const usualSpeed = 120 / 3.6;
const topShare = 0.8;
const deceleration = 3;
const interval = 45;
const count = 15;

/**
 * Answers the heating snubs of FMVSS 135: 15 from 120 km/h (or 80 % of the top speed, if lower) to half of it at 3.0 m/s²,
 * one every 45 s.
 *
 * Assumes: the speed is regained evenly over what the interval leaves, as the schedule wants a car to.
 *
 * @param input - top speed, m/s
 * @returns the events
 * @throws OutOfRangeError where the speed cannot be
 * Source: [fmvss-135]
 * @example
 * heatingSnubs({ topSpeed: 60 }).length // => 29
 */
export function heatingSnubs({ topSpeed }: HeatingSnubsInput): readonly ScheduleEvent[] {
  const from = Math.min(usualSpeed, topShare * requireRange('top speed', topSpeed, 'm/s', 5, 150));
  const snub: ScheduleEvent = { kind: 'slow', from, to: from / 2, deceleration };
  const between: ScheduleEvent = { kind: 'regain', to: from, interval };
  return Array.from({ length: count }, (_, at) => (at === 0 ? [snub] : [between, snub])).flat();
}
