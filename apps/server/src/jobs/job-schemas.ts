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

/** Media types that a job document may come as. */
export const documentTypes = ['application/json', 'application/yaml'];

/** Headers of a change; without If-Match it is refused in words of its own. */
export const changeHeaders = z.looseObject({
  'if-match': z
    .string()
    .optional()
    .describe('The version that you changed, in quotes, as its ETag gave it. Required.'),
});

/** Headers of a request that may be answered with 304. */
export const lookHeaders = z.looseObject({
  'if-none-match': z.string().optional().describe('The ETag that you have.'),
});
