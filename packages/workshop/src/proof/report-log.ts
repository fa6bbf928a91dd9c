import type { LogRefusal, LogReport } from '../results/log-report.ts';

export interface LogFile {
  readonly name: string;
  readonly content: Uint8Array;
}

export interface ReportLogOptions {
  /** m/s; null leaves distances as driven, absent guesses none. */
  readonly nominalSpeed?: number;
  readonly units?: 'us' | 'metric';
}

export function reportLog(_file: LogFile, _options: ReportLogOptions = {}): LogReport | LogRefusal {
  throw new Error('not written yet');
}
