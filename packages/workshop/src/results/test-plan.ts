import { z } from 'zod';
import { estimate } from './estimate.ts';

const plannedRun = z.strictObject({
  order: z.number().int(),
  /** `warm-up` runs are driven and not counted. `repeat` is the old set-up once more, after the new one. */
  set: z.enum(['before', 'after', 'repeat']),
  purpose: z.enum(['warm-up', 'counted']),
  /** Out and back over one stretch, so that grade and wind cancel. */
  direction: z.enum(['out', 'back']),
});

/** What to drive so that a difference of the wanted size shows, and what to write down meanwhile. */
export const testPlan = z.strictObject({
  kind: z.literal('test-plan'),
  version: z.literal(1),
  sentence: z.string(),
  nominalSpeed_m_s: z.number(),
  /** The difference that should show. */
  resolution_m: z.number(),
  /** Standard deviation of single stops, and where that comes from. */
  spread_m: z.number(),
  spreadOrigin: z.enum(['measured', 'stated', 'assumed']),
  /** Chance to see a difference of that size. */
  power: z.number(),
  /** Chance of a false alarm, two-sided. */
  level: z.number(),
  runsPerSet: z.number().int(),
  /** Where the spread is only known from few stops: runs per set for the low and the high end of what it may be. */
  runsPerSetRange: z.strictObject({ low: z.number().int(), high: z.number().int() }),
  /** What `runsPerSet` runs do show with the same chance. */
  shows_m: z.number(),
  withRepeat: z.boolean(),
  runs: z.array(plannedRun),
  /** From one stop to the next; by the heat model where a job is given. */
  coolDown: z.strictObject({
    interval_s: estimate,
    startTemperature_C: z.strictObject({ low: z.number(), high: z.number() }),
    origin: z.enum(['model', 'assumed']),
    reason: z.string(),
  }),
  /** Minutes of driving, warm-up and cool-down included. */
  duration_min: estimate,
  /** In the order in which they are done. */
  steps: z.array(z.string()),
  conditions: z.array(z.strictObject({ what: z.string(), why: z.string() })),
  cautions: z.array(z.string()),
  warnings: z.array(z.string()),
});

export type TestPlan = z.infer<typeof testPlan>;
