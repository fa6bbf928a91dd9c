import type { ChannelTable } from '../../channels/channel-table.ts';
import { drivenWay } from './driven-way.ts';

/** The same stretches of a log, measured twice. */
export interface OdometerWay {
  /** m, by the odometer. */
  readonly odometer: number;
  /** m, the speed integrated over time. */
  readonly speed: number;
  /** m, smallest step of the odometer. */
  readonly resolution: number;
}

/** Share of an odometer's steps that may go back, where it starts again from zero. */
const mostFalls = 0.02;

/**
 * The way that a log drove by its odometer and by its speed, over those stretches alone in which both are known.
 *
 * @param table - the log
 * @param distance - m, the odometer, one a row
 * @param speed - m/s, one a row
 * @returns both; null where the distance does not only grow, as one told for each row alone
 */
export function odometerWay(
  table: ChannelTable,
  distance: Float64Array,
  speed: Float64Array,
): OdometerWay | null {
  const driven = drivenWay(table, speed);
  const sum = { odometer: 0, speed: 0, resolution: Infinity };
  let [steps, falls, last] = [0, 0, NaN];
  let before: ReturnType<typeof driven.at> = null;
  for (let row = 0; row < distance.length; row += 1) {
    if (Number.isNaN(distance[row]!)) continue;
    const here = driven.at(row);
    const step = distance[row]! - last;
    if (step > 0) steps += 1;
    if (step < 0) falls += 1;
    if (here !== null && before !== null && here.stretch === before.stretch && step >= 0) {
      sum.odometer += step;
      sum.speed += here.way - before.way;
      if (step > 0) sum.resolution = Math.min(sum.resolution, step);
    }
    last = distance[row]!;
    before = here;
  }
  return steps === 0 || falls > (steps + falls) * mostFalls ? null : sum;
}
