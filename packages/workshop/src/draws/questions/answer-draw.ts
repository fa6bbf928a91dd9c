import type { Settled } from '../../settle/settle.ts';

/**
 * Answers one set-up in one draw: figure k of the question goes to into[k]. The first figure is a stopping distance, m;
 * where that is not finite the draw counts as without rest. Throws `OutOfRangeError` where the draw can't be computed.
 */
export type AnswerDraw = (settled: Settled, row: number, into: Float64Array) => void;
