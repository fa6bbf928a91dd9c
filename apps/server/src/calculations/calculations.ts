import type {
  Comparison,
  ComparisonRefusal,
  FadeRefusal,
  FadeReport,
  LogFile,
  LogRefusal,
  LogReport,
  Reconciliation,
  ReconciliationRefusal,
  ReportLogOptions,
  TestPlan,
} from '@standstill/workshop';
import type { z } from 'zod';
import type { planRequest } from '../plans/plan-schemas.ts';
import type { KeptLog } from '../proof/kept-log.ts';
import type { ProofAnswer } from '../proof/proof-answer.ts';
import type { QuestionTask } from '../questions/answer-question.ts';
import type { JobQuestionName, QuestionReport } from '../questions/job-questions.ts';
import type { OfJob } from './of-job.ts';

export interface LogTask {
  readonly file: LogFile;
  readonly options: ReportLogOptions;
  /** The job that the log is kept with, and the id that a run may call it by: what it says of the log holds. */
  readonly of?: { readonly document: unknown; readonly id: string };
}

/** The stops of a log to be drawn; all of them, or one by its number. */
export interface DrawingTask extends LogTask {
  readonly stop?: number;
}

/** What every answer from kept logs starts from; what is not said is taken from the job's runs, where they say it. */
interface ProofTask {
  readonly document: unknown;
  readonly logs: readonly KeptLog[];
  /** m/s. */
  readonly nominalSpeed?: number;
  readonly units: 'us' | 'metric';
  /** Whether the answer is to be drawn, too. */
  readonly picture: boolean;
}

export interface ComparisonTask extends ProofTask {
  readonly names: { readonly before: string; readonly after: string };
  readonly definition?: 'application' | 'gate';
  readonly seed: number;
  /** Known differences beside those that the runs tell. */
  readonly confounders: readonly string[];
  /** Ids of the set-ups before and after. */
  readonly expectation?: { readonly setUp: string; readonly against: string };
}

export interface ExplanationTask extends ProofTask {
  readonly setUp?: string;
  readonly draws?: number;
  readonly seed: number;
  readonly confounders: readonly string[];
}

export interface FadeTask extends ProofTask {
  /** A second row of stops; none where empty. */
  readonly against: readonly KeptLog[];
  readonly name?: string;
  readonly againstName?: string;
  readonly definition?: 'application' | 'gate';
  readonly setUp?: string;
  readonly draws?: number;
  readonly seed: number;
}

export interface PlanTask {
  /** Null without a job. */
  readonly document: unknown;
  readonly logs: readonly KeptLog[];
  readonly asked: Omit<z.output<typeof planRequest>, 'jobId' | 'from'>;
}

/** Everything that takes long enough to hold up other requests. */
export interface Calculations {
  /** Answers a question of a job. */
  ask<Name extends JobQuestionName>(task: QuestionTask<Name>): Promise<OfJob<QuestionReport[Name]>>;
  reportLog(task: LogTask): Promise<LogReport | LogRefusal>;
  drawStops(task: DrawingTask): Promise<{ readonly sentence: string; readonly picture: string | null }>;
  compare(task: ComparisonTask): Promise<ProofAnswer<Comparison | ComparisonRefusal>>;
  fade(task: FadeTask): Promise<ProofAnswer<FadeReport | FadeRefusal>>;
  plan(task: PlanTask): Promise<ProofAnswer<TestPlan>>;
  explain(task: ExplanationTask): Promise<ProofAnswer<Reconciliation | ReconciliationRefusal>>;
  close(): Promise<void>;
}
