import { comparison, comparisonRefusal } from '@standstill/workshop';
import { z } from 'zod';

const logIds = z
  .array(z.string())
  .min(1, 'at least one id of a kept log')
  .max(40, 'at most 40 ids of kept logs');
const name = z.string().min(1).max(200);

/** Two sets of kept logs of one job. */
export const comparisonRequest = z.strictObject({
  jobId: z.string(),
  before: logIds,
  after: logIds,
  beforeName: name.default('before'),
  afterName: name.default('after'),
  definition: z.enum(['application', 'gate']).exactOptional(),
  nominalSpeed_m_s: z.number().positive().max(150).exactOptional(),
  seed: z.number().int().min(0).max(0xffffffff).default(1),
  /** Known differences between the sets besides the set-up and what the job's runs tell. */
  confounders: z.array(z.string().min(1).max(500)).max(50).default([]),
  units: z.enum(['us', 'metric']).default('us'),
  /** Ids of the set-ups before and after, to hold the change against what the model expects; else those of the runs. */
  expectation: z.strictObject({ setUp: z.string(), against: z.string() }).exactOptional(),
});

export const comparisonAnswer = z.union([comparison, comparisonRefusal]);

export type ComparisonRequest = z.infer<typeof comparisonRequest>;
