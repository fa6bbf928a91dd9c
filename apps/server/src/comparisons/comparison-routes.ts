import type { Store, StoredJob } from '@standstill/workshop';
import type { App } from '../app.ts';
import type { ComparedLog, ComparisonTask } from '../calculations/calculations.ts';
import { findJob } from '../jobs/find-job.ts';
import { invalidJob } from '../jobs/read-document.ts';
import { findLog } from '../logs/find-log.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import { RequestRefusal } from '../problems/request-refusal.ts';
import type { ServerContext } from '../server-context.ts';
import { comparisonAnswer, comparisonRequest } from './comparison-schemas.ts';
import type { ComparisonRequest } from './comparison-schemas.ts';

/** Most bytes of logs that one comparison may read. */
const greatestTotal = 256 * 1024 * 1024;

/** Holds kept logs of a job against each other; keeps nothing. */
export function comparisonRoutes(app: App, { store, calculations }: ServerContext): void {
  const schema = {
    operationId: 'compare',
    summary: 'What the measured stops before and after really show',
    body: comparisonRequest,
    response: { 200: comparisonAnswer, ...problemAnswers },
  };
  app.post('/api/comparisons', { schema }, async (request) => {
    const { body } = request;
    const job = await findJob(store, body.jobId);
    await refuseTooMuch(store, body);
    const answer = await calculations.compare(await taskFor(store, job, body));
    if (answer.ok) return answer.comparison;
    if (answer.about === 'job') throw invalidJob(answer.problems);
    const sentences = answer.problems.map(({ found, message }) => `${found}: ${message}`);
    throw new RequestRefusal('log-not-usable', sentences.join(' '), { problems: answer.problems });
  });
}

async function refuseTooMuch(store: Store, { jobId, before, after }: ComparisonRequest): Promise<void> {
  const size = new Map((await store.listLogs(jobId)).map(({ id, bytes }) => [id, bytes]));
  const total = [...before, ...after].reduce((sum, id) => sum + (size.get(id) ?? 0), 0);
  if (total <= greatestTotal) return;
  const detail = `The logs have ${Math.round(total / 1e6)} MB together; accepted is up to ${Math.round(greatestTotal / 1e6)} MB.`;
  throw new RequestRefusal('body-too-large', detail);
}

async function taskFor(store: Store, job: StoredJob, body: ComparisonRequest): Promise<ComparisonTask> {
  const { definition, nominalSpeed_m_s: nominalSpeed, seed, confounders, units, expectation } = body;
  return {
    document: job.document,
    before: { name: body.beforeName, logs: await readLogs(store, job.id, body.before) },
    after: { name: body.afterName, logs: await readLogs(store, job.id, body.after) },
    seed,
    confounders,
    units,
    ...(expectation === undefined ? {} : { expectation }),
    ...(definition === undefined ? {} : { definition }),
    ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
  };
}

async function readLogs(
  store: Store,
  jobId: string,
  ids: readonly string[],
): Promise<readonly ComparedLog[]> {
  const logs: ComparedLog[] = [];
  for (const id of ids) {
    const { log, bytes } = await findLog(store, jobId, id);
    logs.push({ id, file: { name: log.name, content: bytes } });
  }
  return logs;
}
