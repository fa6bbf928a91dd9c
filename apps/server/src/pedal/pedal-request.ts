import { z } from 'zod';

/** Which pedal to report; what is left out is as the job says. */
const pedalOptions = z.strictObject({
  /** Id; the car as found where left out. */
  setUp: z.string().exactOptional(),
  pedalForce_N: z.number().min(5).max(2000).exactOptional(),
  /** Deceleration to give the firmness at. */
  deceleration_m_s2: z.number().min(0.1).max(20).exactOptional(),
  /** Pushes from light to hard, `20 lbf 1.1 in; 40 lbf 1.6 in; …`, or a table with headings. */
  measured: z
    .strictObject({ engine: z.enum(['running', 'off']), points: z.string().min(1).max(20_000) })
    .exactOptional(),
  /** Draws behind the intervals. */
  draws: z.number().int().min(1).max(5000).exactOptional(),
  seed: z.number().int().min(0).max(0xffffffff).exactOptional(),
  units: z.enum(['us', 'metric']).exactOptional(),
});

/** A kept job by its id, or a document that is not kept. */
export const pedalRequest = z
  .strictObject({
    jobId: z.string().exactOptional(),
    document: z.unknown().optional(),
    options: pedalOptions.exactOptional(),
  })
  .refine((body) => (body.jobId === undefined) !== (body.document === undefined), {
    error: 'either a jobId or a document',
  });

export type PedalOptionsInput = z.infer<typeof pedalOptions>;
