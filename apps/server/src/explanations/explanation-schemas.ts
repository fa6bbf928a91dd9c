import { reconciliation, reconciliationRefusal } from '@standstill/workshop';
import { z } from 'zod';
import { proofOption } from '../proof/proof-option.ts';

const { jobId, logIds, nominalSpeed_m_s, confounders, seed, units } = proofOption;

/** Kept logs of one job, by side or as its runs say, to hold its model against. */
export const explanationRequest = z.strictObject({
  jobId,
  /** Logs whose runs say by role or set-up which side they are of; all of the job where nothing is named. */
  logs: logIds.exactOptional(),
  before: logIds.exactOptional(),
  after: logIds.exactOptional(),
  /** Id of the set-up after the change; that of the runs where absent. */
  setUp: z.string().exactOptional(),
  nominalSpeed_m_s: nominalSpeed_m_s.exactOptional(),
  draws: z.number().int().min(100).max(3000).exactOptional(),
  seed,
  confounders,
  units,
});

export const explanationAnswer = z.union([reconciliation, reconciliationRefusal]);
