import { z } from 'zod';

const logIds = z
  .array(z.string())
  .min(1, 'at least one id of a kept log')
  .max(40, 'at most 40 ids of kept logs');

/** What requests about kept logs may say, each said alike everywhere. */
export const proofOption = {
  jobId: z.string(),
  logIds,
  name: z.string().min(1).max(200),
  definition: z.enum(['application', 'gate']),
  nominalSpeed_m_s: z.number().positive().max(150),
  seed: z.number().int().min(0).max(0xffffffff).default(1),
  /** Known differences between the sets besides the set-up and what the job's runs tell. */
  confounders: z.array(z.string().min(1).max(500)).max(50).default([]),
  units: z.enum(['us', 'metric']).default('us'),
} as const;
