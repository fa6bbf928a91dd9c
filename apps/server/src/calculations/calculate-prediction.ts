import { predict } from '@standstill/workshop';
import type { PredictionAnswer, PredictionTask } from './calculations.ts';
import { ofJob } from './of-job.ts';

/**
 * Predicts a job document as asked.
 *
 * @param task - a job document and how to predict it
 * @returns the prediction, or everything that stands in its way
 */
export function calculatePrediction({ document, options }: PredictionTask): PredictionAnswer {
  const found = ofJob(document, options.setUps ?? [], (job) => predict(job, options));
  return found.ok ? { ok: true, prediction: found.answer } : found;
}
