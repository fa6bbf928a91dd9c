import { fadePicture } from '@standstill/pictures';
import { expectFade, reportFade, setsOfJob, withoutStartWindow } from '@standstill/workshop';
import type {
  FadeRefusal,
  FadeReport,
  FadeRuns,
  GivenLog,
  Job,
  ReportFadeInput,
  ReportLogOptions,
} from '@standstill/workshop';
import type { ProofAnswer } from '../proof/proof-answer.ts';
import { readKeptLogs } from '../proof/read-kept-logs.ts';
import type { FadeTask } from './calculations.ts';
import { ofJob } from './of-job.ts';

type Answer = FadeReport | FadeRefusal;

/**
 * Reads one or two rows of stops and says whether they get longer; where the set-up is known, beside what the model
 * expects.
 *
 * @param task - the logs and their job
 * @returns the report with its picture, or what stands in its way
 */
export function calculateFade(task: FadeTask): ProofAnswer<Answer> {
  const asked = { path: 'setUp', ids: task.setUp === undefined ? [] : [task.setUp] };
  const found = ofJob(task.document, asked, (job) => fadeOf(job, task));
  return found.ok ? found.answer : { ...found, about: 'job' };
}

function fadeOf(job: Job, task: FadeTask): ProofAnswer<Answer> {
  const { units, nominalSpeed, definition, picture } = task;
  const options: ReportLogOptions = { units, ...(nominalSpeed === undefined ? {} : { nominalSpeed }) };
  const [first, second] = [task.logs, task.against].map((logs) =>
    readKeptLogs(withoutStartWindow(job), logs, options),
  );
  if (first === undefined || second === undefined) throw new Error('a row of stops without its reading');
  if (!first.ok) return first;
  if (!second.ok) return second;
  const row = rowOf(job, first.logs, task.name ?? 'stops');
  const input: ReportFadeInput = {
    set: row.set,
    units,
    ...(second.logs.length === 0
      ? {}
      : { against: rowOf(job, second.logs, task.againstName ?? 'against').set }),
    ...(definition === undefined ? {} : { definition }),
    ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
  };
  const measured = reportFade(input);
  if (measured.kind === 'fade-refusal') return { ok: true, answer: measured, picture: null };
  const answer = reportFade({ ...input, ...expected(job, row, task, measured.nominalSpeed_m_s) });
  const draw = picture && answer.kind === 'fade-report';
  return { ok: true, answer, picture: draw ? fadePicture(answer, { units }) : null };
}

/** The logs follow each other as named; their runs tell the set-up where they agree on one. */
function rowOf(job: Job, logs: readonly GivenLog[], name: string): FadeRuns {
  const [found, ...others] = setsOfJob(job, logs).fades;
  const only = others.length === 0 ? found : undefined;
  const reports = logs.map(({ report }) => report);
  return { setUp: only?.setUp ?? null, set: { ...only?.set, name, reports } };
}

function expected(
  job: Job,
  { set, setUp: driven }: FadeRuns,
  { setUp: asked, draws, seed }: FadeTask,
  nominalSpeed: number,
): Pick<ReportFadeInput, 'expectation' | 'warnings'> {
  const setUp = asked ?? driven;
  if (setUp === null) return {};
  const expectation = expectFade(job, {
    setUp,
    set,
    nominalSpeed,
    seed,
    ...(draws === undefined ? {} : { draws }),
  });
  if (expectation !== null) return { expectation, warnings: expectation.warnings };
  return {
    warnings: [`By the job, "${setUp}" does not come to rest in every stop: there is nothing to expect.`],
  };
}
