import { drawOnPool } from '../draws/pool/draw-on-pool.ts';
import type { DrawPool, DrawWatch } from '../draws/pool/draw-pool.ts';
import type { Job } from '../job/job.ts';
import type { Prediction } from '../results/prediction.ts';
import { predictionFrom, predictionRequest } from './predict.ts';
import type { PredictOptions } from './predict.ts';

/**
 * The same prediction as `predict`, to the last digit, its draws drawn by all hands of a pool.
 *
 * @param job - the job
 * @param options - as `predict`
 * @param pool - who draws
 * @param watch - who looks on, and may call it off
 * @returns the prediction, SI with the unit in each key (°C for temperatures)
 * @throws what `predict` throws; DrawsCalledOffError where the watch calls it off; what a hand fails with
 */
export async function predictOnPool(
  job: Job,
  options: PredictOptions,
  pool: DrawPool,
  watch: DrawWatch = {},
): Promise<Prediction> {
  const request = predictionRequest(job, options);
  return predictionFrom(job, options, await drawOnPool(job, request, pool, watch));
}
