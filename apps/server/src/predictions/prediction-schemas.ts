import type { PredictOptions } from '@standstill/workshop';
import { z } from 'zod';

/** How to predict; what is left out is as the job says. */
const predictionOptions = z.strictObject({
  speed_m_s: z.number().positive().max(150).exactOptional(),
  pedalForce_N: z.number().positive().max(5000).exactOptional(),
  /** Draws behind the intervals. */
  draws: z.number().int().min(1).max(5000).exactOptional(),
  seed: z.number().int().min(0).max(0xffffffff).exactOptional(),
  /** How the draws are spread. */
  sampling: z.enum(['latin-hypercube', 'sobol']).exactOptional(),
  /** Ids; the first is what the others are set against. */
  setUps: z.array(z.string()).min(1).max(20).exactOptional(),
  units: z.enum(['us', 'metric']).exactOptional(),
});

/** A kept job by its id, or a document that is not kept. */
export const predictionRequest = z
  .strictObject({
    jobId: z.string().exactOptional(),
    document: z.unknown().optional(),
    options: predictionOptions.exactOptional(),
  })
  .refine((body) => (body.jobId === undefined) !== (body.document === undefined), {
    error: 'either a jobId or a document',
  });

type PredictionOptionsInput = z.infer<typeof predictionOptions>;

/** The options as the workshop takes them. */
export function predictOptions({
  speed_m_s: speed,
  pedalForce_N: force,
  ...rest
}: PredictionOptionsInput): PredictOptions {
  return {
    ...rest,
    ...(speed === undefined ? {} : { speed }),
    ...(force === undefined ? {} : { pedalForce: force }),
  };
}
