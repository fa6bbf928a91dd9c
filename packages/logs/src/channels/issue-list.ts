import type { LogIssueCode } from '../log-codes.ts';
import type { LogIssue } from './log-issue.ts';

/** Collects what was skipped, repaired or doubted while a log is read: one entry a code and subject, counted. */
export interface IssueList {
  /** Counts one more; the message and line of the first one stay. */
  readonly add: (code: LogIssueCode, line: number | null, message: () => string, subject?: string) => void;
  /** How many were counted under a code, all subjects together. */
  readonly count: (code: LogIssueCode) => number;
  readonly list: () => readonly LogIssue[];
}

/** @returns an empty list of issues */
export function issueList(): IssueList {
  const entries = new Map<string, { code: string; message: string; line: number | null; count: number }>();
  return {
    add: (code, line, message, subject = '') => {
      const key = `${code}\n${subject}`;
      const entry = entries.get(key);
      if (entry === undefined) entries.set(key, { code, message: message(), line, count: 1 });
      else entry.count += 1;
    },
    count: (code) =>
      [...entries.values()].reduce((sum, entry) => (entry.code === code ? sum + entry.count : sum), 0),
    list: () => [...entries.values()].map((entry) => ({ ...entry })),
  };
}
