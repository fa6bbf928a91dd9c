import { basename } from 'node:path';
import { setsPicture } from '@standstill/pictures';
import type { UnitSystem } from '@standstill/units';
import { compareRuns, type LogReport } from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { logFiles } from '../input/log-files.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { logReading, type LogOptions } from '../input/report-log-file.ts';
import { requireJob } from '../input/require-job.ts';
import { requireReport } from '../input/require-report.ts';
import { comparisonText } from '../print/comparison-text.ts';
import { jsonText } from '../print/json-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireFree } from '../surface/write-new-file.ts';
import { writePicture, type PictureOptions } from '../surface/write-picture.ts';
import { comparedLogs, type LogsByRole } from './compared-logs.ts';

export interface CompareLogsOptions extends LogOptions, PictureOptions {
  readonly before?: readonly string[];
  readonly after?: readonly string[];
  readonly repeat?: readonly string[];
  readonly referenceBefore?: readonly string[];
  readonly referenceAfter?: readonly string[];
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
  const files = filesOf([before, after], options);
  requireFree(options.svg, options.force);
  const seed = readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }) ?? 1;
  if (options.job === undefined && options.setUp !== undefined)
    throw new CommandError('--set-up needs --job, the file that has it.', exitCode.usage);
  const job = options.job === undefined ? null : (await requireJob(options.job)).job;
  const read = await logReading(options, Object.values(files).flat(), job);
  const reports = Object.entries(files).flatMap(([role, all]) =>
    all.map((file) => ({ role: role as keyof LogsByRole, file, report: requireReport(file, read) })),
  );
  const names = { before: nameOf('before', files.before), after: nameOf('after', files.after) };
  const sets = comparedLogs(reports, { job, names, ...knownOptions({ setUp: options.setUp }) }, options);
  const comparison = compareRuns({
    ...sets,
    seed,
    units: options.units,
    ...knownOptions({ definition: options.definition }),
  });
  if (options.json === true) terminal.out(jsonText(comparison));
  if (comparison.kind === 'comparison-refusal') {
    const hint = comparison.code === 'no-gate-distance' ? ' (--speed "60 mph")' : '';
    terminal.note(`${comparison.sentence}${hint}`);
    return exitCode.no;
  }
  if (options.json !== true)
    terminal.out(wrapText(comparisonText(comparison, options.units, terminal), terminal.width));
  const ofSide = (side: 'before' | 'after'): readonly LogReport[] => sets[side].reports;
  await writePicture(
    options,
    () => setsPicture(comparison, { before: ofSide('before'), after: ofSide('after') }, options),
    terminal,
  );
  return exitCode.ok;
}

function filesOf(
  [before, after]: readonly (string | undefined)[],
  options: CompareLogsOptions,
): Readonly<Record<keyof LogsByRole, readonly string[]>> {
  const files = {
    before: logFiles([before, ...(options.before ?? [])]),
    after: logFiles([after, ...(options.after ?? [])]),
    repeat: logFiles(options.repeat ?? []),
    'reference-before': logFiles(options.referenceBefore ?? []),
    'reference-after': logFiles(options.referenceAfter ?? []),
  };
  if (files.before.length === 0 || files.after.length === 0)
    throw new CommandError('compare needs a log from before and one from after.', exitCode.usage);
  if ((files['reference-before'].length === 0) !== (files['reference-after'].length === 0))
    throw new CommandError(
      'A reference car tells something only with --reference-before and --reference-after.',
      exitCode.usage,
    );
  return files;
}

function nameOf(side: string, files: readonly string[]): string {
  return files.length === 1 ? `${side} (${basename(files[0] ?? '')})` : `${side} (${files.length} logs)`;
}
