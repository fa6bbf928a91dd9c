import type { Job } from '../../job/job.ts';

/**
 * The job without its window of start temperatures: stops that are to show fade start hotter each time, and a window
 * meant for single stops would leave out all but the first.
 *
 * @param job - as read
 * @returns the same job, in whose logs stops count however hot they start
 */
export function withoutStartWindow(job: Job): Job {
  return { ...job, test: { ...job.test, startTemperatureLow: null, startTemperatureHigh: null } };
}
