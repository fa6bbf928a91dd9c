import type { Job } from '../job/job.ts';
import type { Prediction } from '../results/prediction.ts';

/** All SI; what is left out is as the job says. */
export interface PredictOptions {
  /** m/s. */
  readonly speed?: number;
  /** N at the pedal pad. */
  readonly pedalForce?: number;
  /** Draws behind the intervals; 400 where absent. */
  readonly draws?: number;
  readonly seed?: number;
  /** Ids; all where absent. The first is what the others are set against. */
  readonly setUps?: readonly string[];
  /** Units of the sentences; `us` where absent. */
  readonly units?: 'us' | 'metric';
}

export function predict(_job: Job, _options: PredictOptions = {}): Prediction {
  throw new Error('not written yet');
}
