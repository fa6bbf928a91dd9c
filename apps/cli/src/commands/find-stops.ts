import { stopsPicture } from '@standstill/pictures';
import type { UnitSystem } from '@standstill/units';
import type { LogRefusal, LogReport } from '@standstill/workshop';
import { logReading, type LogOptions } from '../input/report-log-file.ts';
import { requireJob } from '../input/require-job.ts';
import { jsonText } from '../print/json-text.ts';
import { keepLines } from '../print/keep-lines.ts';
import { logReportText } from '../print/log-report-text.ts';
import { refusalLine } from '../print/refusal-line.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireFree } from '../surface/write-new-file.ts';
import { writePicture, type PictureOptions } from '../surface/write-picture.ts';

export interface FindStopsOptions extends LogOptions, PictureOptions {
  readonly job?: string;
  readonly json?: boolean;
}

/** Finds the stops in logs. A log that can't be used is one line of the errors; the others are still told. */
export async function findStops(
  files: readonly string[],
  options: FindStopsOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  requireFree(options.svg, options.force);
  const job = options.job === undefined ? null : (await requireJob(options.job)).job;
  const read = await logReading(options, files, job);
  const results: (LogReport | LogRefusal)[] = [];
  for (const file of files) {
    const result = read(file);
    results.push(result);
    if (result.kind === 'log-refusal') terminal.note(refusalLine(file, result));
    else if (options.json !== true) terminal.out(textOf(result, results.length > 1, options.units, terminal));
  }
  if (options.json === true) terminal.out(jsonText(results));
  const reports = results.filter((result) => result.kind === 'log-report');
  if (options.json !== true) for (const line of keepLines(options, reports)) terminal.note(line);
  if (reports.length > 0) await writePicture(options, () => stopsPicture(reports, options), terminal);
  if (reports.length < results.length) return exitCode.unreadable;
  return reports.some(({ stops }) => stops.length > 0) ? exitCode.ok : exitCode.no;
}

function textOf(report: LogReport, another: boolean, units: UnitSystem, terminal: Terminal): string {
  return `${another ? '\n' : ''}${wrapText(logReportText(report, units, terminal), terminal.width)}`;
}
