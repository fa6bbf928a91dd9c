import type { UnitSystem } from '@standstill/units';
import type { LogRefusal, LogReport } from '@standstill/workshop';
import { reportLogFile, reportOptions, type LogOptions } from '../input/report-log-file.ts';
import { jsonText } from '../print/json-text.ts';
import { logReportText } from '../print/log-report-text.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';

export interface FindStopsOptions extends LogOptions {
  readonly units: UnitSystem;
  readonly json?: boolean;
}

/** Finds the stops in logs. A log that can't be used is one line of the errors; the others are still told. */
export async function findStops(
  files: readonly string[],
  options: FindStopsOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const known = reportOptions(options);
  const results: (LogReport | LogRefusal)[] = [];
  for (const file of files) {
    const result = await reportLogFile(file, known);
    results.push(result);
    if (result.kind === 'log-refusal') terminal.note(refusalLine(file, result));
    else if (options.json !== true) terminal.out(textOf(result, results.length > 1, options.units, terminal));
  }
  if (options.json === true) terminal.out(jsonText(results));
  if (results.some(({ kind }) => kind === 'log-refusal')) return exitCode.unreadable;
  return results.some((result) => result.kind === 'log-report' && result.stops.length > 0)
    ? exitCode.ok
    : exitCode.no;
}

function textOf(report: LogReport, another: boolean, units: UnitSystem, terminal: Terminal): string {
  return `${another ? '\n' : ''}${wrapText(logReportText(report, units, terminal), terminal.width)}`;
}

const hints: Readonly<Record<string, string>> = {
  'log-no-time': ' (--time-column "name")',
  'log-no-speed': ' (--speed-column "name" --speed-unit km/h)',
  'log-speed-without-unit': ' (--speed-column "name" --speed-unit km/h, and --speed-scale)',
  'log-no-column': ' (--time-column, --speed-column)',
};

/** The sentence names the file already where it needs to; the option that helps comes behind it. */
export function refusalLine(file: string, { code, sentence }: LogRefusal): string {
  return `${sentence.includes(file) ? sentence : `${file}: ${sentence}`}${hints[code] ?? ''}`;
}
