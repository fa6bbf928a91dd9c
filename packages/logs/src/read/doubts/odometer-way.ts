import type { ChannelTable } from '../../channels/channel-table.ts';

/** The same stretches of a log, measured twice. */
export interface OdometerWay {
  /** m, by the odometer. */
  readonly odometer: number;
  /** m, the speed integrated over time. */
  readonly speed: number;
  /** m, smallest step of the odometer. */
  readonly resolution: number;
}

/** s; over longer silence of the speed nothing is integrated. */
const longestSilence = 2;

/** Sums of the speed between two readings of the odometer. */
interface Leg {
  way: number;
  isWhole: boolean;
}

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
  const sum = { odometer: 0, speed: 0, resolution: Infinity };
  let [steps, falls, lastDistance, lastSpeed] = [0, 0, NaN, NaN];
  let lastTime = NaN;
  let leg: Leg = { way: 0, isWhole: false };
  let segment = 0;
  for (let row = 0; row < table.time.length; row += 1) {
    if (table.segmentStarts[segment] === row) {
      segment += 1;
      [lastDistance, lastSpeed] = [NaN, NaN];
      leg = { way: 0, isWhole: false };
    }
    const time = table.time[row]!;
    if (!Number.isNaN(speed[row]!)) {
      if (!Number.isNaN(lastSpeed)) {
        leg.way += ((speed[row]! + lastSpeed) / 2) * (time - lastTime);
        if (time - lastTime > longestSilence) leg.isWhole = false;
      }
      [lastSpeed, lastTime] = [speed[row]!, time];
    }
    if (Number.isNaN(distance[row]!)) continue;
    const step = distance[row]! - lastDistance;
    if (step !== 0 && !Number.isNaN(step)) steps += 1;
    if (step < 0) falls += 1;
    if (leg.isWhole && step >= 0) {
      sum.odometer += step;
      sum.speed += leg.way;
      if (step > 0 && step < sum.resolution) sum.resolution = step;
    }
    lastDistance = distance[row]!;
    leg = { way: 0, isWhole: !Number.isNaN(lastSpeed) };
  }
  return steps === 0 || falls > steps * 0.02 ? null : sum;
}
