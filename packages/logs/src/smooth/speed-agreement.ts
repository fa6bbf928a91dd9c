import { clockGrain } from '../stops/clock-grain.ts';
import type { SpeedRun, SpeedTrack } from '../stops/speed-run.ts';
import type { RealSamples } from './real-samples.ts';

/** How an accelerometer goes with the changes of the speed: reading = intercept + slope × change. */
export interface SpeedAgreement {
  /** From -1 to 1. */
  readonly correlation: number;
  readonly slope: number;
  /** m/s². */
  readonly intercept: number;
}

/** s; over shorter times the rounding and delay of a speed hide its changes. */
const shortest = 0.4 - clockGrain;
/** m/s²; changes that are surely braking or accelerating, and how many of them are needed. */
const sure = 1;
const enough = 3;

interface Sums {
  count: number;
  sure: number;
  x: number;
  y: number;
  xx: number;
  xy: number;
  yy: number;
}

/**
 * Holds an accelerometer against the changes of the speed, each over 0.4 s or from one sample to the next, whichever is
 * longer, while the car moves.
 *
 * @param track - the speed
 * @param samples - m/s² of the accelerometer
 * @returns how they go together; null where the log has too few surely braked moments
 */
export function speedAgreement(track: SpeedTrack, samples: RealSamples): SpeedAgreement | null {
  const sums: Sums = { count: 0, sure: 0, x: 0, y: 0, xx: 0, xy: 0, yy: 0 };
  let row = 0;
  for (const run of track.runs) row = addRun(sums, run, samples, row);
  const { count: n, x, y, xx, xy, yy } = sums;
  if (sums.sure < enough) return null;
  const spread = n * xx - x * x;
  const common = n * xy - x * y;
  const slope = common / spread;
  return {
    correlation: common / Math.sqrt(Math.max(spread * (n * yy - y * y), Number.MIN_VALUE)),
    slope,
    intercept: (y - slope * x) / n,
  };
}

function addRun(sums: Sums, run: SpeedRun, { time, values }: RealSamples, firstRow: number): number {
  let row = firstRow;
  let from = 0;
  for (let i = 1; i < run.time.length; i += 1) {
    const step = run.time[i]! - run.time[from]!;
    if (step < shortest) continue;
    while (row < time.length && time[row]! < run.time[from]! - clockGrain) row += 1;
    let [sum, count] = [0, 0];
    for (; row < time.length && time[row]! < run.time[i]! - clockGrain; row += 1) {
      sum += values[row]!;
      count += 1;
    }
    if (count >= 3 && run.speed[i]! > 0 && run.speed[from]! > 0)
      add(sums, (run.speed[i]! - run.speed[from]!) / step, sum / count);
    from = i;
  }
  return row;
}

function add(sums: Sums, change: number, reading: number): void {
  sums.count += 1;
  if (Math.abs(change) > sure) sums.sure += 1;
  sums.x += change;
  sums.y += reading;
  sums.xx += change * change;
  sums.xy += change * reading;
  sums.yy += reading * reading;
}
