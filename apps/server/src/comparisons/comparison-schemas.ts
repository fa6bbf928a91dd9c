import { comparison, comparisonRefusal } from '@standstill/workshop';
import { z } from 'zod';
import { proofOption } from '../proof/proof-option.ts';

const { jobId, logIds, name, definition, nominalSpeed_m_s, seed, confounders, units } = proofOption;

/** Sets of kept logs of one job. */
export const comparisonRequest = z
  .strictObject({
    jobId,
    before: logIds,
    after: logIds,
    /** The old set-up once more, after the new one. */
    repeat: logIds.exactOptional(),
    /** Another car that was left alone, on both days. */
    referenceBefore: logIds.exactOptional(),
    referenceAfter: logIds.exactOptional(),
    beforeName: name.default('before'),
    afterName: name.default('after'),
    definition: definition.exactOptional(),
    nominalSpeed_m_s: nominalSpeed_m_s.exactOptional(),
    seed,
    confounders,
    units,
    /** Ids of the set-ups before and after, to hold the change against what the model expects; else those of the runs. */
    expectation: z.strictObject({ setUp: z.string(), against: z.string() }).exactOptional(),
  })
  .refine(({ referenceBefore: b, referenceAfter: a }) => (b === undefined) === (a === undefined), {
    error: 'a reference car with both referenceBefore and referenceAfter',
    path: ['referenceAfter'],
  });

export const comparisonAnswer = z.union([comparison, comparisonRefusal]);
