import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import { gatherLogs } from '../proof/gather-logs.ts';
import { refusalFor } from '../proof/refusal-for.ts';
import type { ServerContext } from '../server-context.ts';
import { planAnswer, planRequest } from './plan-schemas.ts';

/** Plans a test before it is driven; keeps nothing. */
export function planRoutes(app: App, { store, calculations }: ServerContext): void {
  const schema = {
    operationId: 'plan',
    summary:
      'What to drive so that a difference shows: how many stops, in which order, and what to write down',
    body: planRequest,
    response: { 200: planAnswer, ...problemAnswers },
  };
  app.post('/api/plans', { schema }, async (request) => {
    const { jobId, from = [], ...asked } = request.body;
    const document = jobId === undefined ? null : (await findJob(store, jobId)).document;
    const logs = jobId === undefined ? [] : await gatherLogs(store, jobId, [{ key: 'from', ids: from }]);
    const found = await calculations.plan({ document, logs, asked });
    if (!found.ok) throw refusalFor(found);
    return found.answer;
  });
}
