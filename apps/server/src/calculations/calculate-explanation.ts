import { expectationPicture } from '@standstill/pictures';
import { confoundersOf, explainStops, setsOfJob } from '@standstill/workshop';
import type { Job, JobSets, Reconciliation, ReconciliationRefusal, RunSet } from '@standstill/workshop';
import type { ProofAnswer } from '../proof/proof-answer.ts';
import { readKeptLogs } from '../proof/read-kept-logs.ts';
import { requestProblem } from './request-problem.ts';
import type { ExplanationTask } from './calculations.ts';
import { ofJob } from './of-job.ts';

type Answer = Reconciliation | ReconciliationRefusal;

/**
 * Reads kept logs and holds the model of their job against the stops in them.
 *
 * @param task - the logs and their job
 * @returns the reconciliation with its picture, or what stands in its way
 */
export function calculateExplanation(task: ExplanationTask): ProofAnswer<Answer> {
  const asked = { path: 'setUp', ids: task.setUp === undefined ? [] : [task.setUp] };
  const found = ofJob(task.document, asked, (job) => explained(job, task));
  return found.ok ? found.answer : { ...found, about: 'job' };
}

function explained(job: Job, task: ExplanationTask): ProofAnswer<Answer> {
  const { units, nominalSpeed, setUp, draws, seed } = task;
  const read = readKeptLogs(job, task.logs, {
    units,
    ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
  });
  if (!read.ok) return read;
  const sets = setsOfJob(job, read.logs, { setUps: setUp === undefined ? {} : { after: setUp } });
  const { before, after, change } = sets;
  if (before === null) return nothingBefore();
  const speed = nominalSpeed ?? sets.nominalSpeed;
  const answer = explainStops({
    job,
    before: { setUp: change?.against ?? setUpOf(before, job), reports: before.reports },
    after: afterOf(sets, setUp),
    confounders: [...(after === null ? [] : confoundersOf({ before, after, units })), ...task.confounders],
    units,
    draws,
    seed,
    ...(speed === null ? {} : { nominalSpeed: speed }),
  });
  const draw = task.picture && answer.kind === 'reconciliation';
  return { ok: true, answer, picture: draw ? expectationPicture(answer, { units }) : null };
}

function afterOf(
  { after, change }: JobSets,
  asked: string | undefined,
): { setUp: string; reports: RunSet['reports'] } | null {
  const setUp = change?.setUp ?? asked;
  return setUp === undefined ? null : { setUp, reports: after?.reports ?? [] };
}

/** Of the runs, else the car as found. */
function setUpOf({ runs = [] }: RunSet, job: Job): string {
  return runs.find((run) => run !== null)?.setUp ?? job.setUps[0]?.id ?? '';
}

function nothingBefore(): ProofAnswer<Answer> {
  const message =
    'there is no log from before the change to learn from; name one, or give its run the role "before"';
  const about = {
    code: 'set-too-small',
    path: 'before',
    found: 'no log',
    accepted: 'at least one log',
    message,
  };
  return { ok: false, problems: [requestProblem(about)], about: 'logs' };
}
