import { limitsReport } from '@standstill/workshop';
import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { invalidJob } from '../jobs/read-document.ts';
import { predictOptions, predictionRequest } from '../predictions/prediction-schemas.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import type { ServerContext } from '../server-context.ts';

/** Says what holds set-ups back, and what to measure next; keeps nothing. */
export function limitsRoutes(app: App, { store, calculations }: ServerContext): void {
  const schema = {
    operationId: 'limits',
    summary: 'What holds the set-ups of a job back, where the feet go, and what to measure next',
    body: predictionRequest,
    response: { 200: limitsReport, ...problemAnswers },
  };
  app.post('/api/limits', { schema }, async (request) => {
    const { jobId, document, options } = request.body;
    const kept = jobId === undefined ? document : (await findJob(store, jobId)).document;
    const found = await calculations.limits({ document: kept, options: predictOptions(options ?? {}) });
    if (!found.ok) throw invalidJob(found.problems);
    return found.answer;
  });
}
