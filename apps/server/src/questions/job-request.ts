import { z } from 'zod';

/** A kept job by its id, or a document that is not kept, and what is asked of it. */
export interface JobRequest<Options> {
  readonly jobId?: string;
  readonly document?: unknown;
  readonly options?: Options;
}

/**
 * @param options - schema of what may be asked
 * @returns the schema of a request that asks it of a kept job or of a document
 */
export function jobRequest<Options>(options: z.ZodType<Options>): z.ZodType<JobRequest<Options>> {
  return z
    .strictObject({
      jobId: z.string().exactOptional(),
      document: z.unknown().optional(),
      options: options.exactOptional(),
    })
    .refine((body) => (body.jobId === undefined) !== (body.document === undefined), {
      error: 'either a jobId or a document',
    });
}
