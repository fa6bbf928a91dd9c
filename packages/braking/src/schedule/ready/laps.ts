import { requireRange } from '@standstill/numerics';
import type { ScheduleEvent } from '../schedule-event.ts';

/** One place of a lap where the car is braked. */
export interface BrakingPoint {
  /** v_1, m/s. */
  readonly from: number;
  /** v_2, m/s. */
  readonly to: number;
  /** s from this first touch to the next one. */
  readonly next: number;
  /** m/s²; `usualTrackDeceleration` where left out. */
  readonly deceleration?: number;
}

/** m/s² of a car on road tires near its limit (assumed). */
export const usualTrackDeceleration = 8;

/**
 * Answers laps of a track as the places where a car is braked.
 *
 * Assumes: between two places the speed changes evenly.
 *
 * @param points - of one lap, in order: speeds, m/s; time to the next, s; deceleration, m/s²
 * @param count - how many laps, 1
 * @returns the events; after the last place the car drives on for its time
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * laps([{ from: 50, to: 20, next: 30 }, { from: 40, to: 15, next: 25 }], 2).length // => 8
 */
export function laps(points: readonly BrakingPoint[], count: number): readonly ScheduleEvent[] {
  requireRange('braking points of a lap', points.length, '', 1, 1000);
  requireRange('laps', count, '', 1, 1000);
  const all = Array.from({ length: count }, () => points).flat();
  return all.flatMap((point, at): readonly ScheduleEvent[] => {
    const { from, to, next, deceleration = usualTrackDeceleration } = point;
    const following = all[at + 1] ?? points[0] ?? point;
    requireRange('time to the next braking point', next, 's', 0.1, 3600);
    return [
      { kind: 'slow', from, to, deceleration },
      { kind: 'regain', to: following.from, interval: next },
    ];
  });
}
