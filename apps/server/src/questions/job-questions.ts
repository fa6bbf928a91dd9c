import type { z } from 'zod';
import { balanceQuestion } from './balance-question.ts';
import { heatQuestion } from './heat-question.ts';
import type { JobQuestion } from './job-question.ts';
import { limitsQuestion } from './limits-question.ts';
import { pedalQuestion } from './pedal-question.ts';
import { predictQuestion } from './predict-question.ts';
import { simulateQuestion } from './simulate-question.ts';

/** A report is one line here: its route, its place in the API's description and its way into the thread follow. */
const table = {
  predict: predictQuestion,
  limits: limitsQuestion,
  heat: heatQuestion,
  pedal: pedalQuestion,
  balance: balanceQuestion,
  simulate: simulateQuestion,
};

type Table = typeof table;
export type JobQuestionName = keyof Table;
/** What each question may be asked with, by its name. */
export type QuestionOptions = { readonly [Name in JobQuestionName]: z.output<Table[Name]['options']> };
/** What each question is answered by, by its name. */
export type QuestionReport = { readonly [Name in JobQuestionName]: z.output<Table[Name]['report']> };

/** Every question that is answered by one report of a job, by its name in the API's description. */
export const jobQuestions: {
  readonly [Name in JobQuestionName]: JobQuestion<QuestionOptions[Name], QuestionReport[Name]>;
} = table;

export const jobQuestionNames = Object.keys(table) as readonly JobQuestionName[];
