import type { ScheduleEvent } from '../schedule-event.ts';

/** m/s². */
const rate = 2.5;

/**
 * Answers a common way to bed new pads in: ten snubs from 60 to 10 mph at 3 m/s² and five at 5 m/s², straight after each
 * other, then ten minutes of driving without the brakes and parking.
 *
 * Assumes: nothing of the pads' own maker is known; his way always goes first.
 *
 * @returns the events
 * Source: [common-practice]
 * @example
 * bedIn().length // => 32
 */
export function bedIn(): readonly ScheduleEvent[] {
  const [from, to] = [60 * 0.44704, 10 * 0.44704];
  const snub = (deceleration: number): readonly ScheduleEvent[] => [
    { kind: 'slow', from, to, deceleration },
    { kind: 'accelerate', to: from, rate },
  ];
  const gentle = Array.from({ length: 10 }, () => snub(3)).flat();
  const firm = Array.from({ length: 5 }, () => snub(5)).flat();
  return [...gentle, ...firm, { kind: 'drive', speed: from, time: 600 }, { kind: 'parked', time: 1800 }];
}
