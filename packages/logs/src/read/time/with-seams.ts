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
  let segment = 0;
  const offsets = starts.map((row) => {
    while ((finished.segmentStarts[segment + 1] ?? Infinity) <= row) segment += 1;
    return finished.offsets[segment]!;
  });
  return { time: finished.time, segmentStarts: starts, offsets };
}
