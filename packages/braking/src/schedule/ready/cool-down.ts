import { requireRange } from '@standstill/numerics';
import type { ScheduleEvent } from '../schedule-event.ts';

export interface CoolDownInput {
  /** m/s. */
  readonly speed: number;
  /** s of driving without the brakes. */
  readonly driving: number;
  /** s of standing after it. */
  readonly parked: number;
}

/**
 * Answers a cool-down: some driving without the brakes, then parking.
 *
 * @param input - v, m/s; driving and standing, s
 * @returns the events
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * coolDown({ speed: 15, driving: 300, parked: 1200 }).length // => 2
 */
export function coolDown({ speed, driving, parked }: CoolDownInput): readonly ScheduleEvent[] {
  return [
    { kind: 'drive', speed: requireRange('speed', speed, 'm/s', 0, 150), time: driving },
    { kind: 'parked', time: parked },
  ];
}
