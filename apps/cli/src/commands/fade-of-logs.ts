import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fadePicture } from '@standstill/pictures';
import {
  conditionsFacts,
  expectFade,
  reportFade,
  setsOfJob,
  withoutStartWindow,
  type FadeRuns,
  type Job,
  type ReportFadeInput,
  type RunSet,
} from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { logFiles } from '../input/log-files.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { logReading, namesOf, type LogOptions, type LogReading } from '../input/report-log-file.ts';
import { requireJob } from '../input/require-job.ts';
import { requireReport } from '../input/require-report.ts';
import { fadeText } from '../print/fade-text.ts';
import { jsonText } from '../print/json-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireFree } from '../surface/write-new-file.ts';
import { writePicture, type PictureOptions } from '../surface/write-picture.ts';
import { requireSetUp } from './predict-job.ts';

export interface FadeOfLogsOptions extends LogOptions, PictureOptions {
  readonly against?: readonly string[];
  readonly definition?: 'application' | 'gate';
  readonly job?: string;
  readonly setUp?: string;
  readonly draws?: string;
  readonly seed?: string;
  readonly json?: boolean;
}

interface Rows {
  readonly set: FadeRuns;
  readonly against: FadeRuns | null;
}

/** Says whether stops driven one after the other get longer. */
export async function fadeOfLogs(
  logs: readonly string[],
  options: FadeOfLogsOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  requireFree(options.svg, options.force);
  const draws = knownOptions({
    draws: readCountOption('--draws', options.draws, { low: 20, high: 2000 }),
    seed: readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }),
  });
  const nominalSpeed = readQuantityOption('--speed', options.speed, conditionsFacts.speed);
  if (options.job === undefined && options.setUp !== undefined)
    throw new CommandError('--set-up needs --job, the file that has it.', exitCode.usage);
  const sound = options.job === undefined ? null : await requireJob(options.job);
  const job = sound?.job ?? null;
  if (job !== null && options.setUp !== undefined) requireSetUp(job, options.setUp);
  const files = { set: logFiles(logs), against: logFiles(options.against ?? []) };
  if (files.set.length === 0 && sound !== null) files.set = fadeFiles(sound.job, dirname(sound.file));
  if (files.set.length === 0)
    throw new CommandError('fade needs a log, or --job with runs whose role is fade.', exitCode.usage);
  const read = await logReading(
    options,
    [...files.set, ...files.against],
    job === null ? null : withoutStartWindow(job),
  );
  const rows = rowsOf(files, { given: logs.length > 0, job, read });
  const input: ReportFadeInput = {
    set: rows.set.set,
    units: options.units,
    ...knownOptions({ against: rows.against?.set, definition: options.definition, nominalSpeed }),
  };
  const measured = reportFade(input);
  const report =
    job === null || measured.kind === 'fade-refusal'
      ? measured
      : reportFade({
          ...input,
          ...expected(job, rows.set, options.setUp, { nominalSpeed: measured.nominalSpeed_m_s, ...draws }),
        });
  if (options.json === true) terminal.out(jsonText(report));
  if (report.kind === 'fade-refusal') {
    terminal.note(report.sentence);
    return exitCode.no;
  }
  if (options.json !== true)
    terminal.out(wrapText(fadeText(report, options.units, terminal), terminal.width));
  await writePicture(options, () => fadePicture(report, options), terminal);
  return exitCode.ok;
}

/** The logs of the runs whose role is fade. */
function fadeFiles(job: Job, folder: string): readonly string[] {
  const logs = job.runs.filter(({ role }) => role === 'fade').map(({ log }) => log);
  return [...new Set(logs)].map((log) => (existsSync(log) ? log : join(folder, log)));
}

/** As given; else the fade runs of the job, the first set-up against the second. */
function rowsOf(
  files: { readonly set: readonly string[]; readonly against: readonly string[] },
  { given, job, read }: { readonly given: boolean; readonly job: Job | null; readonly read: LogReading },
): Rows {
  const all = (side: readonly string[]) =>
    side.map((file) => ({ report: requireReport(file, read), names: namesOf(file), role: 'fade' as const }));
  const of = (side: readonly string[]): FadeRuns | null => {
    if (side.length === 0) return null;
    const logs = all(side);
    const name = side.map((file) => basename(file)).join(', ');
    const runs = job === null ? [] : setsOfJob(job, logs).fades;
    const setUp = runs.length === 1 ? (runs[0]?.setUp ?? null) : null;
    const set: RunSet = {
      ...(runs.length === 1 ? runs[0]?.set : {}),
      name,
      reports: logs.map(({ report }) => report),
    };
    return { setUp, set };
  };
  if (given || job === null) {
    const set = of(files.set);
    if (set === null) throw new Error('a row of stops without a log');
    return { set, against: of(files.against) };
  }
  const [set, against = null, ...others] = setsOfJob(job, all(files.set)).fades;
  if (set === undefined) throw new Error('fade runs without a set');
  if (others.length > 0)
    throw new CommandError(
      `The job has fade runs of more than two set-ups; name the logs, and the other ones with --against.`,
      exitCode.usage,
    );
  return { set, against: of(files.against) ?? against };
}

function expected(
  job: Job,
  { set, setUp: driven }: FadeRuns,
  asked: string | undefined,
  options: { readonly nominalSpeed: number; readonly draws?: number; readonly seed?: number },
): Pick<ReportFadeInput, 'expectation' | 'warnings'> {
  const setUp = asked ?? driven;
  if (setUp === null)
    throw new CommandError(
      `fade --job needs --set-up: what these stops were driven with, one of ${job.setUps.map(({ id }) => id).join(', ')}.`,
      exitCode.usage,
    );
  const expectation = expectFade(job, { setUp, set, ...options });
  if (expectation !== null) return { expectation, warnings: expectation.warnings };
  return {
    warnings: [`By the job, "${setUp}" does not come to rest in every stop: there is nothing to expect.`],
  };
}
