import type { FinishedTime } from './time-base.ts';

/**
 * Starts new segments at rows where the source itself says that something new begins.
 *
 * @param finished - the time base
 * @param rows - the rows, ascending
 * @returns the time base with these segments as well
 */
export function withSeams(finished: FinishedTime, rows: readonly number[]): FinishedTime {
  const starts = [...new Set([...finished.segmentStarts, ...rows])].sort((a, b) => a - b);
  const offsets = starts.map((row) => {
    const after = finished.segmentStarts.findIndex((start) => start > row);
    return finished.offsets[(after < 0 ? finished.offsets.length : after) - 1]!;
  });
  return { time: finished.time, segmentStarts: starts, offsets };
}
