import type { z } from 'zod';
import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { invalidJob } from '../jobs/read-document.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import type { ServerContext } from '../server-context.ts';
import { jobQuestionNames, jobQuestions } from './job-questions.ts';
import type { JobQuestionName } from './job-questions.ts';
import { jobRequest } from './job-request.ts';

/** Answers every question of a job, each at its address; keeps nothing. */
export function questionRoutes(app: App, context: ServerContext): void {
  for (const name of jobQuestionNames) questionRoute(app, context, name);
}

function questionRoute(app: App, { store, calculations }: ServerContext, question: JobQuestionName): void {
  const { path, summary, options: accepted, report } = jobQuestions[question];
  const answered: z.ZodType = report;
  const schema = {
    operationId: question,
    summary,
    body: jobRequest(accepted),
    response: { 200: answered, ...problemAnswers },
  };
  app.post(path, { schema }, async (request) => {
    const { jobId, document, options = accepted.parse({}) } = request.body;
    const kept = jobId === undefined ? document : (await findJob(store, jobId)).document;
    const found = await calculations.ask({ question, document: kept, options });
    if (!found.ok) throw invalidJob(found.problems);
    return found.answer;
  });
}
