import { testPlan } from '@standstill/workshop';
import { z } from 'zod';
import { proofOption } from '../proof/proof-option.ts';

const { jobId, logIds, nominalSpeed_m_s, seed, units } = proofOption;

/** What a test is to show; what is left out is as the job says, else assumed and said. */
export const planRequest = z
  .strictObject({
    jobId: jobId.exactOptional(),
    /** Kept logs of the job whose stops tell how far single stops scatter. */
    from: logIds.exactOptional(),
    setUps: z.array(z.string()).min(1).max(20).exactOptional(),
    resolution_m: z.number().min(0.05).max(50).exactOptional(),
    spread_m: z.number().min(0.001).max(100).exactOptional(),
    nominalSpeed_m_s: nominalSpeed_m_s.min(5).max(100).exactOptional(),
    startTemperature_C: z
      .strictObject({ low: z.number().min(-50).max(800), high: z.number().min(-50).max(800) })
      .refine(({ low, high }) => low < high, { error: 'a window that ends warmer than it begins' })
      .exactOptional(),
    power: z.number().min(0.5).max(0.99).exactOptional(),
    level: z.number().min(0.001).max(0.2).exactOptional(),
    withRepeat: z.boolean().default(true),
    draws: z.number().int().min(5).max(200).exactOptional(),
    seed,
    units,
  })
  .refine(({ jobId: job, from }) => job !== undefined || from === undefined, {
    error: 'a jobId with the logs of `from`',
    path: ['jobId'],
  })
  .refine(({ spread_m, from }) => spread_m === undefined || from === undefined, {
    error: 'either a spread_m or logs to take it from',
    path: ['spread_m'],
  });

export const planAnswer = testPlan;
