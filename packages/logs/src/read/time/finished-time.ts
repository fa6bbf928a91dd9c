import { quantile } from '@standstill/numerics';
import type { ClockJump } from './clock-steps.ts';

/** A time base cut into segments across which nothing is computed. */
export interface FinishedTime {
  readonly time: Float64Array;
  readonly segmentStarts: readonly number[];
  /** s to add to `time` to get the source's clock, one a segment. */
  readonly offsets: readonly number[];
}

/**
 * Cuts a time base where the clock jumped back and where a step is longer than five usual steps and longer than 1 s.
 *
 * @param time - s, ascending
 * @param jumps - the first row and the rows before which the clock jumped back
 * @returns the time base with its segments
 */
export function finishedTime(time: Float64Array, jumps: readonly ClockJump[]): FinishedTime {
  const limit = gapLimit(time);
  const segmentStarts: number[] = [];
  const offsets: number[] = [];
  let next = 0;
  for (let row = 0; row < time.length; row += 1) {
    const jumped = jumps[next]?.row === row;
    if (jumped) next += 1;
    if (!jumped && !(row > 0 && time[row]! - time[row - 1]! > limit)) continue;
    segmentStarts.push(row);
    offsets.push(jumps[next - 1]!.offset);
  }
  return { time, segmentStarts, offsets };
}

/** s; five usual steps, at least 1 s. The usual step is the median of up to 10,000 steps spread over the log. */
function gapLimit(time: Float64Array): number {
  const stride = Math.max(1, Math.floor(time.length / 10_000));
  const steps: number[] = [];
  for (let row = 1; row < time.length; row += stride) steps.push(time[row]! - time[row - 1]!);
  return steps.length === 0 ? Infinity : Math.max(1, 5 * quantile(steps, 0.5));
}
