import type {
  Comparison,
  ComparisonRefusal,
  LogFile,
  LogRefusal,
  LogReport,
  PredictOptions,
  Prediction,
  Problem,
  ReportLogOptions,
} from '@standstill/workshop';

/** What is predicted: a job document and how. */
export interface PredictionTask {
  readonly document: unknown;
  readonly options: PredictOptions;
}

export type PredictionAnswer =
  | { readonly ok: true; readonly prediction: Prediction }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface LogTask {
  readonly file: LogFile;
  readonly options: ReportLogOptions;
}

/** Two sets of logs, and the change of set-up that stands between them where it is known. */
export interface ComparisonTask {
  readonly before: { readonly name: string; readonly files: readonly LogFile[] };
  readonly after: { readonly name: string; readonly files: readonly LogFile[] };
  readonly definition?: 'application' | 'gate';
  /** m/s. */
  readonly nominalSpeed?: number;
  readonly seed: number;
  readonly confounders: readonly string[];
  readonly units: 'us' | 'metric';
  readonly expectation: {
    readonly document: unknown;
    readonly setUp: string;
    readonly against: string;
  } | null;
}

export type ComparisonAnswer =
  | { readonly ok: true; readonly comparison: Comparison | ComparisonRefusal }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly about: 'job' | 'logs' };

/** Everything that takes long enough to hold up other requests. */
export interface Calculations {
  predict(task: PredictionTask): Promise<PredictionAnswer>;
  reportLog(task: LogTask): Promise<LogReport | LogRefusal>;
  compare(task: ComparisonTask): Promise<ComparisonAnswer>;
  close(): Promise<void>;
}
