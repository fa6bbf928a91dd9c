import { peekHeadings } from '@standstill/logs';
import type { LogFile } from '../report-log.ts';

/**
 * The headings of a log, without reading it: what a person can name a column by.
 *
 * @param content - all bytes, or a way to read them piece by piece
 * @returns the headings in their order; null where they do not stand at the beginning
 */
export function logHeadings(content: LogFile['content']): readonly string[] | null {
  return peekHeadings(content)?.split(' | ') ?? null;
}
