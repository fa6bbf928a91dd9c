import { z } from 'zod';
import { assumedValue } from './assumed-value.ts';
import { estimate } from './estimate.ts';
import { warning } from './warning.ts';

/** Something measured that the model has an answer to. Values in the unit that is named. */
const observation = z.strictObject({
  set: z.enum(['before', 'after']),
  quantity: z.enum([
    'stopping-distance',
    'fully-developed-deceleration',
    'build-up-time',
    'deceleration-per-pressure',
    'deceleration-per-pedal-force',
  ]),
  title: z.string(),
  unit: z.string(),
  measured: estimate,
  /** By the job alone, and after learning from the stops before. */
  byJob: estimate,
  learned: estimate,
  /** Whether the job alone agrees with it: measured and `byJob` differ by no more than both allow. */
  agrees: z.boolean(),
});

/** A value of the job that the stops before may say something about. */
const learnedValue = z.strictObject({
  /** Path in the job document, or a name of the model's own such as `tires.grip`. */
  path: z.string(),
  title: z.string(),
  unit: z.string(),
  byJob: estimate,
  learned: estimate,
  /** Share of its spread that the stops took away, 0 to 1. */
  narrowed: z.number(),
});

/** The model held against measured stops: learned from the stops before, then set against those after. */
export const reconciliation = z.strictObject({
  kind: z.literal('reconciliation'),
  version: z.literal(1),
  sentence: z.string(),
  nominalSpeed_m_s: z.number(),
  before: z.strictObject({ setUp: z.string(), title: z.string(), count: z.number().int() }),
  /** Null where only the stops before are there: then this is a prediction that has learned from them. */
  after: z.strictObject({ setUp: z.string(), title: z.string(), count: z.number().int() }).nullable(),
  observations: z.array(observation),
  learned: z.array(learnedValue),
  /** What these stops can't tell apart; each group acts on them alike. */
  notToldApart: z.array(
    z.strictObject({
      titles: z.array(z.string()),
      correlation: z.number(),
      sentence: z.string(),
      /** What to measure so that they come apart. */
      toTellApart: z.string().nullable(),
    }),
  ),
  /** Whether the stops before fit the job within its stated spreads: chi-squared over its degrees of freedom and its chance. */
  fit: z.strictObject({
    chiSquared: z.number(),
    degreesOfFreedom: z.number().int(),
    p: z.number(),
    sentence: z.string(),
  }),
  change: z
    .strictObject({
      byJob_m: estimate,
      /** After learning. This is the expectation that the measured change is set against. */
      expected_m: estimate,
      /** Null without stops after. */
      measured_m: estimate.nullable(),
      /** Expected over measured; null where the measured change can't be told from zero or there is none. */
      share: estimate.nullable(),
      unexplained_m: estimate.nullable(),
    })
    .nullable(),
  /** What may be behind the rest: tires, surface, driver, warm-up, by what is known to have differed. */
  beyondTheBrakes: z.array(z.string()),
  warnings: z.array(warning),
  assumed: z.array(assumedValue),
});

export type Reconciliation = z.infer<typeof reconciliation>;

/** The model can't be held against these stops: one sentence that says why and what to do. */
export const reconciliationRefusal = z.strictObject({
  kind: z.literal('reconciliation-refusal'),
  version: z.literal(1),
  code: z.string(),
  sentence: z.string(),
});

export type ReconciliationRefusal = z.infer<typeof reconciliationRefusal>;
