import type { LogReport } from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { refusalLine } from '../print/refusal-line.ts';
import type { LogReading } from './report-log-file.ts';

/** Reads a log that the answer can't do without. */
export function requireReport(file: string, reading: LogReading): LogReport {
  const report = reading(file);
  if (report.kind === 'log-report') return report;
  throw new CommandError(refusalLine(file, report), exitCode.unreadable);
}
