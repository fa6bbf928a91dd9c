import { availableParallelism } from 'node:os';
import { predict, predictOnPool } from '@standstill/workshop';
import type { Job, PredictOptions, Prediction } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { startDrawThreads } from './draw-threads.ts';

/** Draws from which on starting threads is worth it. */
const worthThreads = 1000;

/**
 * Predicts with every core of this machine where there are many draws, and shows on a terminal how far it is.
 *
 * @param job - the job
 * @param options - as `predict`
 * @param terminal - who looks on
 * @returns the same prediction as `predict`
 */
export async function predictInThreads(
  job: Job,
  options: PredictOptions,
  terminal: Terminal,
): Promise<Prediction> {
  const cores = availableParallelism();
  if ((options.draws ?? 0) < worthThreads || cores < 2) return predict(job, options);
  const threads = startDrawThreads(cores);
  const show = terminal.progress;
  const onProgress = (done: number, of: number): void =>
    show?.(`${done.toLocaleString('en-US')} of ${of.toLocaleString('en-US')} draws`);
  try {
    onProgress(0, options.draws ?? 0);
    return await predictOnPool(job, options, threads.pool, { onProgress });
  } finally {
    show?.(null);
    await threads.close();
  }
}
