import type { Job } from '../job/job.ts';

/**
 * Whether the road asked about is wet, by its name or by the water that stands on it.
 *
 * @param job - the job
 * @returns true where grip on water decides
 */
export function isOnWater({ conditions }: Job): boolean {
  return conditions.surface === 'wet' || conditions.facts.waterDepth.value > 0;
}
