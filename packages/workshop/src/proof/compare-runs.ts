import type { Estimate } from '../results/estimate.ts';
import type { Comparison, ComparisonRefusal, LogReport } from '../results/log-report.ts';

export interface RunSet {
  readonly name: string;
  readonly reports: readonly LogReport[];
}

export interface CompareRunsInput {
  readonly before: RunSet;
  readonly after: RunSet;
  /** `application` where absent. */
  readonly definition?: 'application' | 'gate';
  /** m/s; that of the reports where absent. */
  readonly nominalSpeed?: number;
  readonly seed: number;
  /** What the model expects of the change, m, after minus before. */
  readonly expectation?: { readonly setUp: string; readonly difference: Estimate };
  /** Known differences between the sets besides the set-up. */
  readonly confounders?: readonly string[];
  readonly units?: 'us' | 'metric';
}

export function compareRuns(_input: CompareRunsInput): Comparison | ComparisonRefusal {
  throw new Error('not written yet');
}
