import { z } from 'zod';
import { estimate } from './estimate.ts';

const fadeStop = z.strictObject({
  /** 1-based over all stops of the set, in the order driven; what was left out keeps its number. */
  number: z.number().int(),
  log: z.string(),
  start_s: z.number(),
  /** From the nominal speed, level. */
  distance_m: z.number(),
  distanceStandardError_m: z.number(),
  /** s since the stop before ended; null for the first of a log. */
  restedFor_s: z.number().nullable(),
  /** At the start of the stop, one entry for each temperature channel that has a value there. */
  temperatures: z.array(z.strictObject({ channel: z.string(), start_C: z.number() })),
  counted: z.boolean(),
  /** Why it does not count; null where it does. */
  reason: z.string().nullable(),
});

const fadeSet = z.strictObject({
  name: z.string(),
  stops: z.array(fadeStop),
  /** Of the line through the distances that count. Null under three stops. */
  slope_m_per_stop: estimate.nullable(),
  /** Last over first by that line, m. */
  growth_m: estimate.nullable(),
  growthPercent: estimate.nullable(),
  /** Whether a straight line is not enough: a bend that the scatter does not explain. */
  bends: z.boolean(),
  temperatures: z.array(
    z.strictObject({
      channel: z.string(),
      first_C: z.number(),
      highest_C: z.number(),
      slope_C_per_stop: estimate.nullable(),
      /** m longer for each 100 K hotter at the start; null where temperature hardly varies. */
      distance_m_per_100K: estimate.nullable(),
    }),
  ),
});

/** Stops driven one after the other: how distance and temperature go with the number of the stop. */
export const fadeReport = z.strictObject({
  kind: z.literal('fade-report'),
  version: z.literal(1),
  sentence: z.string(),
  nominalSpeed_m_s: z.number(),
  definition: z.enum(['application', 'gate']),
  set: fadeSet,
  /** A second set, such as the same schedule after the change. */
  against: fadeSet.nullable(),
  /** Slope of `against` minus slope of `set`. */
  slopeDifference_m_per_stop: estimate.nullable(),
  /** What the model expects of the same stops, where a job is given. */
  expectation: z
    .strictObject({
      setUp: z.string(),
      growth_m: estimate,
      /** Of the hottest rotor at the start of each stop. */
      temperatures_C: z.array(z.number()),
      sentence: z.string(),
    })
    .nullable(),
  warnings: z.array(z.string()),
});

export type FadeReport = z.infer<typeof fadeReport>;
export type FadeSetResult = z.infer<typeof fadeSet>;

/** Stops that show no fade: one sentence that says what is missing and what to do. */
export const fadeRefusal = z.strictObject({
  kind: z.literal('fade-refusal'),
  version: z.literal(1),
  code: z.string(),
  sentence: z.string(),
});

export type FadeRefusal = z.infer<typeof fadeRefusal>;
