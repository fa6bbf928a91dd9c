import type { UnitSystem } from '@standstill/units';
import type {
  AssumedValue,
  CompareRunsInput,
  Comparison,
  ComparisonRefusal,
  DrawRequest,
  DrawnRange,
  ExplainStopsInput,
  FadeRefusal,
  FadeReport,
  Job,
  JobDocument,
  LogRefusal,
  LogReport,
  PlanTestInput,
  PredictOptions,
  Prediction,
  Problem,
  Reconciliation,
  ReconciliationRefusal,
  ReportLogOptions,
  TestPlan,
} from '@standstill/workshop';
import type { FadeAsk } from './fade-of-job.ts';

/** A job read: what was filled in, or every mistake. */
export type JobRead =
  | { readonly ok: true; readonly job: Job; readonly assumed: readonly AssumedValue[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A job predicted, or every mistake that stands in the way. */
export type Predicted =
  | { readonly ok: true; readonly prediction: Prediction }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A prediction opened: the draws that it stands on, to be drawn by all workers; or every mistake in the way. */
export type PredictionOpened =
  | {
      readonly ok: true;
      readonly job: Job;
      readonly options: PredictOptions;
      readonly request: DrawRequest;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Everything the worker can be asked, with its answer. */
export interface Asks {
  readonly 'new-job': { readonly ask: { readonly title: string }; readonly answer: JobDocument };
  readonly 'read-job': {
    readonly ask: { readonly document: unknown; readonly units: UnitSystem };
    readonly answer: JobRead;
  };
  readonly predict: {
    readonly ask: {
      readonly document: unknown;
      readonly units: UnitSystem;
      readonly setUps?: readonly string[];
    };
    readonly answer: Predicted;
  };
  readonly 'open-prediction': {
    readonly ask: Asks['predict']['ask'];
    readonly answer: PredictionOpened;
  };
  readonly 'finish-prediction': {
    readonly ask: { readonly job: Job; readonly options: PredictOptions; readonly drawn: DrawnRange };
    readonly answer: Prediction;
  };
  readonly 'report-log': {
    readonly ask: {
      readonly name: string;
      readonly content: Uint8Array;
      readonly options: ReportLogOptions;
    };
    readonly answer: LogReport | LogRefusal;
  };
  /** Stops in a row: whether they get longer. */
  readonly fade: { readonly ask: FadeAsk; readonly answer: FadeReport | FadeRefusal };
  /** What to drive so that a change shows. */
  readonly plan: { readonly ask: PlanTestInput; readonly answer: TestPlan };
  /** The model held against measured stops. */
  readonly explain: {
    readonly ask: ExplainStopsInput;
    readonly answer: Reconciliation | ReconciliationRefusal;
  };
  readonly compare: { readonly ask: CompareRunsInput; readonly answer: Comparison | ComparisonRefusal };
}

export type AskKind = keyof Asks;

export interface Request<K extends AskKind = AskKind> {
  readonly kind: K;
  readonly ask: Asks[K]['ask'];
}

/** The answer, or the words of an error that should not have come this far. */
export type Response<K extends AskKind = AskKind> =
  | { readonly ok: true; readonly answer: Asks[K]['answer'] }
  | { readonly ok: false; readonly message: string };
