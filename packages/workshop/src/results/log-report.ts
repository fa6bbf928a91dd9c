import { z } from 'zod';
import { estimate } from './estimate.ts';

const flag = z.strictObject({
  code: z.string(),
  severity: z.enum(['excludes', 'warns']),
  reason: z.string(),
});

/** One stop found in a log; see `FoundStop` in the logs room for the definitions. */
export const stopResult = z.strictObject({
  number: z.number().int(),
  clock: z.string().nullable(),
  start_s: z.number(),
  end_s: z.number(),
  startBy: z.enum(['brake-switch', 'brake-pressure', 'pedal', 'deceleration-onset']),
  entrySpeed_m_s: z.number(),
  applicationDistance_m: z.number(),
  distanceStandardError_m: z.number(),
  /** Standard error of the delay between brake signal and speed, the same for all stops of a logger; absent in old reports. */
  startDelayError_s: z.number().optional(),
  gateDistance_m: z.number().nullable(),
  correctedDistance_m: z.number().nullable(),
  duration_s: z.number(),
  meanDecelerationByDistance_m_s2: z.number(),
  meanDecelerationByTime_m_s2: z.number(),
  meanFullyDevelopedDeceleration_m_s2: z.number().nullable(),
  peakDeceleration_m_s2: z.number(),
  buildUpTime_s: z.number().nullable(),
  sampleRate_Hz: z.number(),
  counted: z.boolean(),
  flags: z.array(flag),
  trace: z.strictObject({ time_s: z.array(z.number()), speed_m_s: z.array(z.number()) }),
});

export const channelResult = z.strictObject({
  name: z.string(),
  quantity: z.string(),
  unitAsRead: z.string(),
  unitOrigin: z.enum(['header', 'format', 'given', 'assumed', 'none']),
});

export const logReport = z.strictObject({
  kind: z.literal('log-report'),
  version: z.literal(1),
  sentence: z.string(),
  source: z.strictObject({
    name: z.string(),
    format: z.string(),
    bytes: z.number().int(),
    rows: z.number().int(),
  }),
  epoch: z.string().nullable(),
  duration_s: z.number(),
  channels: z.array(channelResult),
  issues: z.array(
    z.strictObject({
      code: z.string(),
      message: z.string(),
      line: z.number().int().nullable(),
      count: z.number().int(),
    }),
  ),
  nominalSpeed_m_s: z.number().nullable(),
  stops: z.array(stopResult),
});

/** A log that could not be used at all: one sentence that says what is missing and what to do. */
export const logRefusal = z.strictObject({
  kind: z.literal('log-refusal'),
  version: z.literal(1),
  code: z.string(),
  sentence: z.string(),
  source: z.strictObject({ name: z.string(), bytes: z.number().int() }),
});

const setSummary = z.strictObject({
  name: z.string(),
  count: z.number().int(),
  /** Its interval holds the scatter and what all stops of the set share. */
  mean_m: estimate,
  /** Standard error that all stops of the set share: the unknown delay of the logger. More stops don't help. */
  sharedError_m: z.number(),
  standardDeviation_m: z.number().nullable(),
  best_m: z.number(),
  worst_m: z.number(),
  distances_m: z.array(z.number()),
  /** m per run in run order, with its interval; null under three runs. */
  trend_m_per_run: estimate.nullable(),
});

export const comparison = z.strictObject({
  kind: z.literal('comparison'),
  version: z.literal(1),
  sentence: z.string(),
  /** Which of the two named definitions the distances follow; never mixed. */
  definition: z.enum(['application', 'gate']),
  nominalSpeed_m_s: z.number(),
  before: setSummary,
  after: setSummary,
  /** after minus before; negative is shorter. */
  difference_m: estimate,
  differencePercent: estimate,
  /** Whether both sets seem to come from one logger, so that its unknown delay drops out of the difference. */
  sameLogger: z.boolean(),
  welch: z.strictObject({ t: z.number(), degreesOfFreedom: z.number(), p: z.number() }).nullable(),
  permutation: z.strictObject({
    p: z.number(),
    arrangements: z.number().int(),
    exact: z.boolean(),
  }),
  /** What best-against-best would claim, beside what taking a best of n gains by chance. */
  bestOfEach: z.strictObject({
    difference_m: z.number(),
    expectedGainBefore_m: z.number().nullable(),
    expectedGainAfter_m: z.number().nullable(),
  }),
  /** Runs per set, four at least, needed to see the given difference with 80 % power at this spread. */
  runsNeeded: z.strictObject({ difference_m: z.number(), runsPerSet: z.number().int().nullable() }),
  /** What was different between the sets besides the set-up, and so can't be told from it. */
  confounders: z.array(z.string()),
  /** Set against a prediction where a job is given: how much of the measured change the brakes can explain. */
  expectation: z
    .strictObject({
      setUp: z.string(),
      expected_m: estimate,
      /** Expected over measured change, 1; null where the measured change can't be told from zero. */
      explainedShare: estimate.nullable(),
      unexplained_m: estimate,
      sentence: z.string(),
    })
    .nullable(),
  warnings: z.array(z.string()),
});

/** Two sets that can't be compared: one sentence that says why and what to do. */
export const comparisonRefusal = z.strictObject({
  kind: z.literal('comparison-refusal'),
  version: z.literal(1),
  code: z.string(),
  sentence: z.string(),
});

export type ComparisonRefusal = z.infer<typeof comparisonRefusal>;
export type StopResult = z.infer<typeof stopResult>;
export type LogReport = z.infer<typeof logReport>;
export type LogRefusal = z.infer<typeof logRefusal>;
export type Comparison = z.infer<typeof comparison>;
