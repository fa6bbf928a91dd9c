import { drawOnPool } from '@standstill/workshop';
import type { DrawPool } from '@standstill/workshop';
import type { Asks, Predicted } from '../../worker/protocol.ts';
import { ask } from './ask.ts';
import { drawWorkers } from './draw-workers.ts';

type Question = Asks['predict']['ask'];

/** How this is done; the workers of this page where nothing is said. */
export interface PredictBy {
  readonly ask: typeof ask;
  readonly pool: DrawPool;
}

/**
 * Predicts with the draws spread over all workers: one opens the question, all draw, one says what follows. Where the
 * draws fail, one worker does everything by itself, slower and with the same numbers; what it fails with is the answer.
 *
 * @param question - what is asked
 * @param signal - takes the question back: what is not yet handed out is not drawn, and the workers stay
 * @param onProgress - is told how many draws are done, of how many
 * @param by - how it is done
 * @returns the prediction, or every mistake in its way
 */
export async function predictOnWorkers(
  question: Question,
  signal: AbortSignal,
  onProgress: (done: number, of: number) => void = () => {},
  by: PredictBy = { ask, pool: drawWorkers },
): Promise<Predicted> {
  if (by.pool.hands.length < 2) return by.ask('predict', question, signal);
  const opened = await by.ask('open-prediction', question, signal);
  if (!opened.ok) return opened;
  const { job, options, request } = opened;
  const watch = { onProgress, isCalledOff: () => signal.aborted };
  try {
    const drawn = await drawOnPool(job, request, by.pool, watch);
    signal.throwIfAborted();
    return { ok: true, prediction: await by.ask('finish-prediction', { job, options, drawn }, signal) };
  } catch (reason) {
    if (signal.aborted) throw signal.reason;
    console.warn('The draws could not be spread over workers; one worker draws them all.', reason);
    return by.ask('predict', question, signal);
  }
}
