import { planTest, readJobDocument, runOfLog } from '@standstill/workshop';
import type { GivenLog, Job, PlanTestInput, RunSet, TestPlan } from '@standstill/workshop';
import type { ProofAnswer } from '../proof/proof-answer.ts';
import { readKeptLogs } from '../proof/read-kept-logs.ts';
import type { PlanTask } from './calculations.ts';
import { ofJob } from './of-job.ts';

/**
 * Plans a test, from what the job and its logs say of the car.
 *
 * @param task - what is asked, the job and its logs; no job where it is null
 * @returns the plan, or what stands in its way
 */
export function calculatePlan(task: PlanTask): ProofAnswer<TestPlan> {
  const { setUps = [] } = task.asked;
  if (task.document === null) return { ok: true, answer: planTest(inputOf(task, null, [])), picture: null };
  const reading = readJobDocument(task.document);
  const read = readKeptLogs(reading.ok ? reading.job : null, task.logs, optionsOf(task));
  if (!read.ok) return read;
  const asked = { path: 'setUps', ids: setUps };
  const found = ofJob(task.document, asked, (job) =>
    planTest(inputOf(task, job, measuredSets(job, read.logs))),
  );
  return found.ok ? { ...found, picture: null } : { ...found, about: 'job' };
}

function optionsOf({ asked }: PlanTask): { readonly units: 'us' | 'metric'; readonly nominalSpeed?: number } {
  const { units, nominalSpeed_m_s: nominalSpeed } = asked;
  return { units, ...(nominalSpeed === undefined ? {} : { nominalSpeed }) };
}

function inputOf({ asked }: PlanTask, job: Job | null, measured: readonly RunSet[]): PlanTestInput {
  const {
    resolution_m: resolution,
    spread_m: spread,
    nominalSpeed_m_s: nominalSpeed,
    startTemperature_C: startTemperature,
    ...rest
  } = asked;
  return {
    ...rest,
    measured,
    ...(job === null ? {} : { job }),
    ...(resolution === undefined ? {} : { resolution }),
    ...(spread === undefined ? {} : { spread }),
    ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
    ...(startTemperature === undefined ? {} : { startTemperature }),
  };
}

/** One set for each set-up that the runs tell; else each log by itself, for nobody knows what was changed in between. */
function measuredSets(job: Job, logs: readonly GivenLog[]): readonly RunSet[] {
  const sets = new Map<string, RunSet>();
  for (const log of logs) {
    const run = runOfLog(job.runs, log);
    const key = run === null ? (log.names[0] ?? '') : `set-up ${run.setUp}`;
    const earlier = sets.get(key)?.reports ?? [];
    sets.set(key, { name: run?.setUp ?? log.report.source.name, reports: [...earlier, log.report] });
  }
  return [...sets.values()];
}
