import { z } from 'zod';

/** One line of the list of jobs. */
export const jobSummary = z.object({
  id: z.string(),
  title: z.string(),
  /** Counts up by one with each change; in quotes it is the ETag. */
  version: z.number().int(),
  createdAt: z.string(),
  changedAt: z.string(),
});

/** A job with its document, as it was kept. */
export const storedJob = jobSummary.extend({ document: z.unknown() });

/** The id of a job in an address. */
export const jobParams = z.object({ id: z.string() });
