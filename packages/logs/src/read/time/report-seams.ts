import type { IssueList } from '../../channels/issue-list.ts';
import type { FinishedTime } from './time-base.ts';

/**
 * Counts jumps back and gaps of a finished time base among the issues.
 *
 * @param finished - the time base, s
 * @param issues - where they are counted
 * @param from - index of the first row that was not looked at before
 */
export function reportSeams(
  { time, segmentStarts, offsets }: FinishedTime,
  issues: IssueList,
  from = 0,
): void {
  for (let segment = 1; segment < segmentStarts.length; segment += 1) {
    const row = segmentStarts[segment]!;
    if (row < from) continue;
    if (offsets[segment] === offsets[segment - 1]) {
      const length = time[row]! - time[row - 1]!;
      issues.add(
        'time-gap',
        null,
        () => `The log has gaps, the first of ${length.toFixed(1)} s; nothing is computed across one.`,
      );
    } else
      issues.add('clock-jump-back', null, () => 'The clock jumps back; nothing is computed across the jump.');
  }
}
