import type {
  Comparison,
  ComparisonRefusal,
  LimitsReport,
  LogFile,
  LogRefusal,
  LogReport,
  PedalReport,
  PredictOptions,
  Prediction,
  Problem,
  ReportLogOptions,
} from '@standstill/workshop';
import type { PedalOptionsInput } from '../pedal/pedal-request.ts';
import type { OfJob } from './of-job.ts';

/** What is predicted: a job document and how. */
export interface PredictionTask {
  readonly document: unknown;
  readonly options: PredictOptions;
}

export type PredictionAnswer =
  | { readonly ok: true; readonly prediction: Prediction }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What holds the set-ups of a job back. */
export type LimitsAnswer = OfJob<LimitsReport>;

/** Which pedal is reported: of a job document, and how. */
export interface PedalTask {
  readonly document: unknown;
  readonly options: PedalOptionsInput;
}

export type PedalAnswer = OfJob<PedalReport>;

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
  predict(task: PredictionTask): Promise<PredictionAnswer>;
  limits(task: PredictionTask): Promise<LimitsAnswer>;
  pedal(task: PedalTask): Promise<PedalAnswer>;
  reportLog(task: LogTask): Promise<LogReport | LogRefusal>;
  compare(task: ComparisonTask): Promise<ComparisonAnswer>;
  close(): Promise<void>;
}
