import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expectationPicture } from '@standstill/pictures';
import {
  conditionsFacts,
  confoundersOf,
  explainStops,
  setsOfJob,
  type GivenLog,
  type Job,
  type JobSets,
  type RunSet,
} from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { logFiles } from '../input/log-files.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { logReading, namesOf, type LogOptions } from '../input/report-log-file.ts';
import { requireJob } from '../input/require-job.ts';
import { requireReport } from '../input/require-report.ts';
import { jsonText } from '../print/json-text.ts';
import { reconciliationText } from '../print/reconciliation-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireFree } from '../surface/write-new-file.ts';
import { writePicture, type PictureOptions } from '../surface/write-picture.ts';
import { requireSetUp } from './predict-job.ts';

export interface ExplainJobOptions extends LogOptions, PictureOptions {
  readonly before?: readonly string[];
  readonly after?: readonly string[];
  readonly setUp?: string;
  readonly draws?: string;
  readonly seed?: string;
  readonly assumed?: boolean;
  readonly json?: boolean;
}

interface NamedFile extends Pick<GivenLog, 'role'> {
  readonly file: string;
}

/** Holds the model of a job against its measured stops. */
export async function explainJob(
  path: string,
  options: ExplainJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  requireFree(options.svg, options.force);
  const asked = knownOptions({
    nominalSpeed: readQuantityOption('--speed', options.speed, conditionsFacts.speed),
    draws: readCountOption('--draws', options.draws, { low: 100, high: 20_000 }),
    seed: readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }),
  });
  const { job, file: jobFile } = await requireJob(path);
  if (options.setUp !== undefined) requireSetUp(job, options.setUp);
  const files = filesOf(job, dirname(jobFile), options);
  const read = await logReading(
    options,
    files.map(({ file }) => file),
    job,
  );
  const given = files.map(({ file, ...role }) => ({
    ...role,
    report: requireReport(file, read),
    names: namesOf(file),
  }));
  const sets = setsOfJob(job, given, { setUps: knownOptions({ after: options.setUp }) });
  const before = requireBefore(sets);
  const { units } = options;
  const result = explainStops({
    job,
    before: { setUp: sets.change?.against ?? setUpOf(before, job), reports: before.reports },
    after: afterOf(sets, options.setUp),
    ...knownOptions({ nominalSpeed: sets.nominalSpeed ?? undefined }),
    ...asked,
    confounders: sets.after === null ? [] : confoundersOf({ before, after: sets.after, units }),
    units,
  });
  if (options.json === true) terminal.out(jsonText(result));
  if (result.kind === 'reconciliation-refusal') {
    terminal.note(result.sentence);
    return exitCode.no;
  }
  const look = { units, assumed: options.assumed === true, setsWarnings: sets.warnings };
  if (options.json !== true)
    terminal.out(wrapText(reconciliationText(result, look, terminal), terminal.width));
  await writePicture(options, () => expectationPicture(result, options), terminal);
  return exitCode.ok;
}

function inRole(role: 'before' | 'after', files: readonly string[] = []): readonly NamedFile[] {
  return logFiles(files).map((file) => ({ file, role }));
}

/** As given, else all logs that the runs of the job name. */
function filesOf(job: Job, folder: string, { before, after }: ExplainJobOptions): readonly NamedFile[] {
  const given = [...inRole('before', before), ...inRole('after', after)];
  if (given.length > 0) return given;
  const files = [...new Set(job.runs.map(({ log }) => log))].map((log) =>
    existsSync(log) ? log : join(folder, log),
  );
  if (files.length > 0) return files.map((file) => ({ file }));
  throw new CommandError(
    'The job has no runs; give the logs with --before and --after, or write the runs into the job.',
    exitCode.usage,
  );
}

function requireBefore({ before }: JobSets): RunSet {
  if (before !== null) return before;
  throw new CommandError(
    'There is no log from before the change to learn from; give one with --before.',
    exitCode.usage,
  );
}

function afterOf(
  { after, change }: JobSets,
  asked: string | undefined,
): { setUp: string; reports: RunSet['reports'] } | null {
  const setUp = change?.setUp ?? asked;
  if (after !== null && setUp === undefined)
    throw new CommandError(
      'explain needs --set-up: which set-up the stops after were driven with.',
      exitCode.usage,
    );
  return setUp === undefined ? null : { setUp, reports: after?.reports ?? [] };
}

/** Of the runs, else the car as found. */
function setUpOf({ runs = [] }: RunSet, job: Job): string {
  return runs.find((run) => run !== null)?.setUp ?? job.setUps[0]?.id ?? '';
}
