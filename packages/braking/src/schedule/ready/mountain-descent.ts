import { requireRange } from '@standstill/numerics';
import type { Foot } from '../../set-up/foot.ts';
import type { ScheduleEvent } from '../schedule-event.ts';

export interface MountainDescentInput {
  /** m, height lost. */
  readonly drop: number;
  /** Fall over run, 1. */
  readonly grade: number;
  /** m/s. */
  readonly speed: number;
  /** 1, of what grade asks beyond air and rolling; the engine takes the rest. */
  readonly brakeShare: number;
  /** The stop at the foot of the mountain. */
  readonly foot: Foot;
}

/**
 * Answers a descent at steady speed with the brakes dragging, a stop at its foot, and the car standing there.
 *
 * Equation: time = drop √(1 + i²) / (i v).
 * Assumes: one grade, one speed; standing for half an hour, when the fluid gets hottest.
 * Valid: grade 0.5 to 30 %.
 *
 * @param input - drop, m; grade, 1; v, m/s; brakes' share, 1; foot, N and s
 * @returns the events
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * mountainDescent({ drop: 600, grade: 0.08, speed: 14, brakeShare: 0.6, foot: { force: 200, rampTime: 0.3 } }).length // => 3
 */
export function mountainDescent(input: MountainDescentInput): readonly ScheduleEvent[] {
  const grade = requireRange('fall of the descent', input.grade, '', 0.005, 0.3);
  const speed = requireRange('speed', input.speed, 'm/s', 0.5, 60);
  const drop = requireRange('height lost', input.drop, 'm', 1, 6000);
  const time = (drop * Math.sqrt(1 + grade * grade)) / (grade * speed);
  return [
    { kind: 'descent', grade, speed, time, brakeShare: input.brakeShare },
    { kind: 'stop', from: speed, foot: input.foot },
    { kind: 'parked', time: 1800 },
  ];
}
