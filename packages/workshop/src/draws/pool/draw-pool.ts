import type { Job } from '../../job/job.ts';
import type { DrawRequest } from '../draw-request.ts';
import type { DrawnRange } from '../drawn-range.ts';

/** Draws one range, as `drawRange`; rejects where it can't. */
export type DrawElsewhere = (from: number, to: number) => Promise<DrawnRange>;

/** Takes a request on and draws its ranges one after the other, beside the other hands: a thread, a worker. */
export type DrawHand = (job: Job, request: DrawRequest) => DrawElsewhere;

/** Hands that draw at the same time, started once and kept; what they are made of is the surface's business. */
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
