import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import type { UnitSystem } from '@standstill/units';
import { compareRuns, type LogReport, type ReportLogOptions } from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { reportLogFile, reportOptions, type LogOptions } from '../input/report-log-file.ts';
import { comparisonText } from '../print/comparison-text.ts';
import { jsonText } from '../print/json-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { refusalLine } from './find-stops.ts';
import { knownFromJob, type KnownFromJob } from './known-from-job.ts';

export interface CompareLogsOptions extends LogOptions {
  readonly before?: readonly string[];
  readonly after?: readonly string[];
  readonly definition?: 'application' | 'gate';
  readonly job?: string;
  readonly setUp?: string;
  readonly seed?: string;
  readonly units: UnitSystem;
  readonly json?: boolean;
}

/** Sets the stops measured before against those measured after. */
export async function compareLogs(
  [before, after]: readonly (string | undefined)[],
  options: CompareLogsOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const files = { before: filesOf(before, options.before), after: filesOf(after, options.after) };
  if (files.before.length === 0 || files.after.length === 0)
    throw new CommandError('compare needs a log from before and one from after.', exitCode.usage);
  const seed = readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }) ?? 1;
  const fromJob = await jobOf(options, files);
  const known = { ...knownOptions({ nominalSpeed: fromJob.nominalSpeed }), ...reportOptions(options) };
  const comparison = compareRuns({
    before: { name: nameOf('before', files.before), reports: await reports(files.before, known) },
    after: { name: nameOf('after', files.after), reports: await reports(files.after, known) },
    seed,
    units: options.units,
    ...knownOptions({
      definition: options.definition,
      expectation: fromJob.expectation,
      confounders: fromJob.confounders,
      warnings: fromJob.warnings,
    }),
  });
  if (options.json === true) terminal.out(jsonText(comparison));
  if (comparison.kind === 'comparison-refusal') {
    const hint = comparison.code === 'no-gate-distance' ? ' (--speed "60 mph")' : '';
    terminal.note(`${comparison.sentence}${hint}`);
    return exitCode.no;
  }
  if (options.json !== true)
    terminal.out(wrapText(comparisonText(comparison, options.units, terminal), terminal.width));
  return exitCode.ok;
}

async function jobOf(
  { job, setUp, speed, units }: CompareLogsOptions,
  files: { readonly before: readonly string[]; readonly after: readonly string[] },
): Promise<KnownFromJob> {
  if (job !== undefined) return knownFromJob(job, files, knownOptions({ setUp, speed, units }));
  if (setUp === undefined) return {};
  throw new CommandError('--set-up needs --job, the file that has it.', exitCode.usage);
}

/** Files of one side: each argument is a file, or several with commas between. */
function filesOf(argument: string | undefined, repeated: readonly string[] = []): readonly string[] {
  return [...(argument === undefined ? [] : [argument]), ...repeated].flatMap((text) =>
    existsSync(text) ? [text] : text.split(',').filter((file) => file !== ''),
  );
}

function nameOf(side: string, files: readonly string[]): string {
  return files.length === 1 ? `${side} (${basename(files[0] ?? '')})` : `${side} (${files.length} logs)`;
}

async function reports(files: readonly string[], options: ReportLogOptions): Promise<readonly LogReport[]> {
  const read: LogReport[] = [];
  for (const file of files) {
    const report = await reportLogFile(file, options);
    if (report.kind === 'log-refusal') throw new CommandError(refusalLine(file, report), exitCode.unreadable);
    read.push(report);
  }
  return read;
}
