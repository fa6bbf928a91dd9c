import { prediction } from '@standstill/workshop';
import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { invalidJob } from '../jobs/read-document.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import type { ServerContext } from '../server-context.ts';
import { predictOptions, predictionRequest } from './prediction-schemas.ts';

/** Predicts stops for programs that have no physics of their own; keeps nothing. */
export function predictionRoutes(app: App, { store, calculations }: ServerContext): void {
  const schema = {
    operationId: 'predict',
    summary: 'What the set-ups of a job would do, with intervals',
    body: predictionRequest,
    response: { 200: prediction, ...problemAnswers },
  };
  app.post('/api/predictions', { schema }, async (request) => {
    const { jobId, document, options } = request.body;
    const kept = jobId === undefined ? document : (await findJob(store, jobId)).document;
    const answer = await calculations.predict({ document: kept, options: predictOptions(options ?? {}) });
    if (!answer.ok) throw invalidJob(answer.problems);
    return answer.prediction;
  });
}
