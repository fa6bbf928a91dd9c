import { limits } from '@standstill/workshop';
import type { LimitsAnswer, PredictionTask } from './calculations.ts';
import { ofJob } from './of-job.ts';

/**
 * Says what holds the set-ups of a job document back.
 *
 * @param task - a job document and how to predict it
 * @returns the report, or everything that stands in its way
 */
export function calculateLimits({ document, options }: PredictionTask): LimitsAnswer {
  return ofJob(document, options.setUps ?? [], (job) => limits(job, options));
}
