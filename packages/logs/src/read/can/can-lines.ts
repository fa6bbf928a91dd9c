import type { IssueList } from '../../channels/issue-list.ts';
import type { TextLine } from '../lines/text-lines.ts';
import { candumpLine } from './candump-line.ts';
import type { CanFrame } from './frame.ts';
import { traceLine } from './trace-line.ts';

/** How a log of frames is written. */
export type CanFormat = 'candump' | 'trace';

/** A frame and its line, 1-based. */
export interface NumberedFrame extends CanFrame {
  readonly line: number;
}

/**
 * The data frames of a log; lines that are none are counted.
 *
 * @param lines - the log's lines
 * @param format - how they are written
 * @param issues - where skipped lines are counted
 * @returns the frames in order
 */
export function* canLines(
  lines: Iterable<TextLine>,
  format: CanFormat,
  issues: IssueList,
): Generator<NumberedFrame> {
  const read = format === 'trace' ? traceLine : candumpLine;
  for (const { text, number } of lines) {
    if (text.startsWith(';') || text.startsWith('#')) continue;
    const frame = read(text);
    if (!('kind' in frame)) yield { ...frame, line: number };
    else if (frame.kind === 'other')
      issues.add('frame-without-data', number, () => 'Remote, error and status frames were skipped.');
    else if (frame.kind === 'no-time')
      issues.add('frame-without-time', number, () => 'Frames without a time were skipped.');
    else issues.add('not-a-frame', number, () => 'Lines that are no CAN frame were skipped.');
  }
}
