import { z } from 'zod';
import { problem } from '@standstill/workshop';

/** What every refusal and failure looks like (RFC 9457), sent as `application/problem+json`. */
export const problemDocument = z.object({
  /** Ends in the code that docs/errors.md explains; the address answers that in a sentence. */
  type: z.string(),
  title: z.string(),
  status: z.number().int(),
  /** What is wrong this time and what to do, in a sentence or two. */
  detail: z.string(),
  /** The path that was asked for. */
  instance: z.string(),
  /** The same id is in the server's log. */
  requestId: z.string(),
  /** What is wrong where: for a job or a request with mistakes. */
  problems: z.array(problem).optional(),
  /** The version that stands, where someone else changed the job in between. */
  current: z
    .object({
      id: z.string(),
      title: z.string(),
      version: z.number().int(),
      changedAt: z.string(),
      document: z.unknown(),
    })
    .optional(),
});

export type ProblemDocument = z.infer<typeof problemDocument>;
