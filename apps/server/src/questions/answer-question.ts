import type { OfJob } from '../calculations/of-job.ts';
import { jobQuestions } from './job-questions.ts';
import type { JobQuestionName, QuestionOptions, QuestionReport } from './job-questions.ts';

/** One question of one job document. */
export interface QuestionTask<Name extends JobQuestionName> {
  readonly question: Name;
  readonly document: unknown;
  readonly options: QuestionOptions[Name];
}

/**
 * Answers a question of a job document.
 *
 * @param task - which question, of what, with which options
 * @returns the report, or everything that stands in its way
 */
export function answerQuestion<Name extends JobQuestionName>({
  question,
  document,
  options,
}: QuestionTask<Name>): OfJob<QuestionReport[Name]> {
  return jobQuestions[question].answer(document, options);
}
