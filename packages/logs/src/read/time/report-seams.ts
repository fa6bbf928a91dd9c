import type { IssueList } from '../../channels/issue-list.ts';
import type { FinishedTime } from './finished-time.ts';

/** What is known of a time base beside its rows. */
export interface SeamOptions {
  /** Index of the first row that was not looked at before; 0 where absent. */
  readonly from?: number;
  /** The clock may be a local one, which daylight saving puts forward and back. */
  readonly isLocal?: boolean;
}

const hour = 3600;
/** s, by which a jump of an hour may differ from one: the step that it hides. */
const near = 5;

/**
 * Counts jumps back and gaps of a finished time base among the issues.
 *
 * @param finished - the time base, s
 * @param issues - where they are counted
 * @param options - which rows, and whose clock
 */
export function reportSeams(finished: FinishedTime, issues: IssueList, options: SeamOptions = {}): void {
  const { time, segmentStarts, offsets } = finished;
  for (let segment = 1; segment < segmentStarts.length; segment += 1) {
    const row = segmentStarts[segment]!;
    if (row < (options.from ?? 0)) continue;
    const length = time[row]! - time[row - 1]!;
    const step = length + offsets[segment]! - offsets[segment - 1]!;
    if (options.isLocal === true && Math.abs(Math.abs(step) - hour) < near)
      issues.add(
        'clock-hour-jump',
        null,
        () =>
          `The clock jumps ${step > 0 ? 'forward' : 'back'} by an hour at ${moment(time[row - 1]!)}, as a local clock does when daylight saving begins or ends; nothing is computed across the jump.`,
      );
    else if (step > 0)
      issues.add(
        'time-gap',
        null,
        () =>
          `The log has gaps, the first of ${length.toFixed(1)} s at ${moment(time[row - 1]!)}; nothing is computed across one.`,
      );
    else
      issues.add(
        'clock-jump-back',
        null,
        () =>
          `The clock jumps back by ${(-step).toFixed(1)} s at ${moment(time[row - 1]!)}; nothing is computed across the jump.`,
      );
  }
}

function moment(seconds: number): string {
  return `${seconds.toFixed(1)} s of the log`;
}
