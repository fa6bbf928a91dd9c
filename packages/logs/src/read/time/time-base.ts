import { quantile } from '@standstill/numerics';
import { GrowingColumn } from '../../channels/growing-column.ts';

/** Where a new segment that follows a jump back is put: s after the last row before it. */
const seam = 1;

/** One ascending time base built row by row from a clock that may stand still, jump back or leave gaps. */
export interface TimeBase {
  /**
   * Offers the clock reading of the next row.
   * @param clock - s on the source's clock
   * @returns false where the row can't be placed because its clock stands still
   */
  readonly offer: (clock: number) => boolean;
  readonly finish: () => FinishedTime;
}

export interface FinishedTime {
  readonly time: Float64Array;
  readonly segmentStarts: readonly number[];
  /** s to add to `time` to get the source's clock, one a segment. */
  readonly offsets: readonly number[];
}

/**
 * Puts clock readings on one ascending base.
 *
 * A step back starts a new segment, placed 1 s after the last row; a row at the very time of the row before it is
 * refused. A step longer than five usual steps and longer than 1 s starts a new segment too: nothing is computed across.
 *
 * @param zero - s on the source's clock that becomes `time` = 0; null takes the first reading
 * @returns the time base
 */
export function timeBase(zero: number | null): TimeBase {
  const time = new GrowingColumn();
  const jumps: { row: number; offset: number }[] = [];
  let offset = 0;
  let last = -Infinity;
  const place = (clock: number): boolean => {
    if (time.length === 0) {
      offset = zero ?? clock;
      jumps.push({ row: 0, offset });
    } else if (clock === last) return false;
    else if (clock < last) {
      offset = clock - (time.last() + seam);
      jumps.push({ row: time.length, offset });
    }
    const value = clock - offset;
    if (time.length > 0 && !(value > time.last())) return false;
    last = clock;
    time.push(value);
    return true;
  };
  return { offer: place, finish: () => withGaps(time.finish(), jumps) };
}

function withGaps(time: Float64Array, jumps: readonly { row: number; offset: number }[]): FinishedTime {
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
