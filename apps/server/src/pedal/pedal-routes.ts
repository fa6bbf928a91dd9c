import { pedalReport } from '@standstill/workshop';
import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { invalidJob } from '../jobs/read-document.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import type { ServerContext } from '../server-context.ts';
import { pedalRequest } from './pedal-request.ts';

/** Says what the pedal of a set-up does, and what a measured one tells; keeps nothing. */
export function pedalRoutes(app: App, { store, calculations }: ServerContext): void {
  const schema = {
    operationId: 'pedal',
    summary: 'Where the travel of a pedal goes, what a lost circuit leaves, and what measured pushes tell',
    body: pedalRequest,
    response: { 200: pedalReport, ...problemAnswers },
  };
  app.post('/api/pedal', { schema }, async (request) => {
    const { jobId, document, options = {} } = request.body;
    const kept = jobId === undefined ? document : (await findJob(store, jobId)).document;
    const found = await calculations.pedal({ document: kept, options });
    if (!found.ok) throw invalidJob(found.problems);
    return found.answer;
  });
}
