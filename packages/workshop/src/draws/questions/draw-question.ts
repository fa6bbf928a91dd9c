import type { Job } from '../../job/job.ts';
import type { Settled } from '../../settle/settle.ts';

/**
 * Answers one set-up in one draw: figure k of the question goes to into[k]. The first figure is a stopping distance, m;
 * where that is not finite the draw counts as without rest. Throws `OutOfRangeError` where the draw can't be computed.
 */
export type AnswerDraw = (settled: Settled, row: number, into: Float64Array) => void;

/** What is asked of every draw of every set-up. */
export interface DrawQuestion {
  /** Name of each figure, in the order of the answer. */
  readonly figures: readonly string[];
  /** Draws that a worker is handed at once: enough to be worth the way, few enough to show progress. */
  readonly rangeLength: number;
  /** Makes the room to work in, once for many draws. */
  readonly open: (job: Job) => AnswerDraw;
}
