import type { Foot } from '../../set-up/foot.ts';
import type { ScheduleEvent } from '../schedule-event.ts';
import { heatingSnubs, type HeatingSnubsInput } from './heating-snubs.ts';

export interface HotStopsInput extends HeatingSnubsInput {
  /** What the foot does in the stops: for the rule the mean force of the best cold stop. */
  readonly foot: Foot;
}

/** m/s and m/s² of the schedule; acceleration assumed. */
const speed = 100 / 3.6;
const rate = 2.5;

/**
 * Answers the hot performance of FMVSS 135: a cold stop from 100 km/h for comparison, the heating snubs, and two hot stops
 * from 100 km/h straight after, all under one foot.
 *
 * Assumes: before the snubs the brakes cool to 60 °C, as the first of them wants (55 to 65 °C); the cold stop is there to
 * set the hot ones against it and is not part of the rule's schedule.
 *
 * @param input - top speed, m/s; foot, N and s
 * @returns the events
 * @throws OutOfRangeError where an input cannot be
 * Source: [fmvss-135]
 * @example
 * hotStops({ topSpeed: 60, foot: { force: 300, rampTime: 0.2 } }).length // => 35
 */
export function hotStops({ topSpeed, foot }: HotStopsInput): readonly ScheduleEvent[] {
  const stop: ScheduleEvent = { kind: 'stop', from: speed, foot };
  const again: ScheduleEvent = { kind: 'accelerate', to: speed, rate };
  const snubs = heatingSnubs({ topSpeed });
  const from = snubs[0]?.kind === 'slow' ? snubs[0].from : speed;
  const cool: ScheduleEvent = { kind: 'regain', to: from, rate, coolTo: 60 };
  return [stop, cool, ...snubs, again, stop, again, stop];
}
