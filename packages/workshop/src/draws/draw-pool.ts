import type { Job } from '../job/job.ts';
import type { DrawRequest } from './draw-request.ts';
import type { DrawnRange } from './drawn-range.ts';

/** A range of a request to be drawn somewhere else. */
export interface DrawTask {
  readonly job: Job;
  readonly request: DrawRequest;
  readonly from: number;
  readonly to: number;
}

/** Draws one range after the other, beside the others: a thread, a worker. Rejects where it can't. */
export type DrawHand = (task: DrawTask) => Promise<DrawnRange>;

/** Hands that draw at the same time; what they are made of is the surface's business. */
export interface DrawPool {
  readonly hands: readonly DrawHand[];
}

/** Who looks on while a pool draws. */
export interface DrawWatch {
  /** Is told how many draws are done, of how many. */
  readonly onProgress?: (done: number, of: number) => void;
  /** True once nobody wants the answer any more; no further range is handed out then. */
  readonly isCalledOff?: () => boolean;
}
