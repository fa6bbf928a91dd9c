import { fadeRefusal, fadeReport } from '@standstill/workshop';
import { z } from 'zod';
import { proofOption } from '../proof/proof-option.ts';

const { jobId, logIds, name, definition, nominalSpeed_m_s, seed, units } = proofOption;

/** One row of stops or two, from kept logs of one job. */
export const fadeRequest = z.strictObject({
  jobId,
  logs: logIds,
  /** A second row, such as the same schedule with the other set-up. */
  against: logIds.exactOptional(),
  name: name.exactOptional(),
  againstName: name.exactOptional(),
  definition: definition.exactOptional(),
  nominalSpeed_m_s: nominalSpeed_m_s.exactOptional(),
  /** Id of the set-up of the first row, to say what the model expects of it; that of its runs where absent. */
  setUp: z.string().exactOptional(),
  draws: z.number().int().min(20).max(500).exactOptional(),
  seed,
  units,
});

export const fadeAnswer = z.union([fadeReport, fadeRefusal]);
