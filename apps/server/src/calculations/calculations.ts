import type {
  Comparison,
  ComparisonRefusal,
  LogFile,
  LogRefusal,
  LogReport,
  Problem,
  ReportLogOptions,
} from '@standstill/workshop';
import type { QuestionTask } from '../questions/answer-question.ts';
import type { JobQuestionName, QuestionReport } from '../questions/job-questions.ts';
import type { OfJob } from './of-job.ts';

export interface LogTask {
  readonly file: LogFile;
  readonly options: ReportLogOptions;
}

/** A kept log of a comparison; a run of the job names it by its id or its file name. */
export interface ComparedLog {
  readonly id: string;
  readonly file: LogFile;
}

/** Two sets of logs of one job; what is not said is taken from the job's runs, where they say it. */
export interface ComparisonTask {
  readonly document: unknown;
  readonly before: { readonly name: string; readonly logs: readonly ComparedLog[] };
  readonly after: { readonly name: string; readonly logs: readonly ComparedLog[] };
  readonly definition?: 'application' | 'gate';
  /** m/s. */
  readonly nominalSpeed?: number;
  readonly seed: number;
  /** Known differences beside those that the runs tell. */
  readonly confounders: readonly string[];
  readonly units: 'us' | 'metric';
  /** Ids of the set-ups before and after. */
  readonly expectation?: { readonly setUp: string; readonly against: string };
}

export type ComparisonAnswer =
  | { readonly ok: true; readonly comparison: Comparison | ComparisonRefusal }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly about: 'job' | 'logs' };

/** Everything that takes long enough to hold up other requests. */
export interface Calculations {
  /** Answers a question of a job. */
  ask<Name extends JobQuestionName>(task: QuestionTask<Name>): Promise<OfJob<QuestionReport[Name]>>;
  reportLog(task: LogTask): Promise<LogReport | LogRefusal>;
  compare(task: ComparisonTask): Promise<ComparisonAnswer>;
  close(): Promise<void>;
}
