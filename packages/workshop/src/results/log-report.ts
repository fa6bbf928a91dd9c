import { z } from 'zod';
import { estimate } from './estimate.ts';

const flag = z.strictObject({
  code: z.string(),
  severity: z.enum(['excludes', 'warns']),
  reason: z.string(),
});

/** What a person said of a stop. */
export const stopJudgement = z.strictObject({
  verdict: z.enum(['rejected', 'restored']),
  reason: z.string(),
  by: z.string().nullable(),
  date: z.string().nullable(),
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
  /** Whether it counts in sets: by its flags, unless a person judged otherwise. */
  counted: z.boolean(),
  flags: z.array(flag),
  /** A person's word on the stop, with the reason; null where nobody judged it. Nothing is ever deleted. */
  judgement: stopJudgement.nullable(),
  /** One entry for each temperature channel that has a value near the start. */
  temperatures: z.array(
    z.strictObject({ channel: z.string(), start_C: z.number(), end_C: z.number().nullable() }),
  ),
  /** Mean over the fully developed part, 0.8 to 0.1 of the entry speed; null where it is not recorded. */
  developedPressure_Pa: z.number().nullable(),
  developedPedalForce_N: z.number().nullable(),
  /** Direction of travel at the start, from north; null where it is not recorded. */
  heading_rad: z.number().nullable(),
  /** As smoothed over all sensors that were used, with one standard error of the speed. */
  trace: z.strictObject({
    time_s: z.array(z.number()),
    speed_m_s: z.array(z.number()),
    speedStandardError_m_s: z.array(z.number()),
    deceleration_m_s2: z.array(z.number()),
  }),
});

export const channelResult = z.strictObject({
  name: z.string(),
  quantity: z.string(),
  unitAsRead: z.string(),
  unitOrigin: z.enum(['header', 'format', 'given', 'assumed', 'none']),
  /** Who said what the channel is: the format, a guess from its heading, or a person (now or remembered). */
  chosenBy: z.enum(['format', 'guess', 'person']),
  /** Least and greatest value in SI units of the quantity (°C for temperatures), as read where the quantity is unknown; null without a value, absent in old reports. */
  range: z
    .strictObject({ low: z.number(), high: z.number(), samples: z.number().int() })
    .nullable()
    .optional(),
});

/** A sensor of the log as the smoother saw it. */
export const sensorResult = z.strictObject({
  channel: z.string(),
  quantity: z.string(),
  used: z.boolean(),
  /** Why it was not used, or what was done with it. */
  note: z.string(),
  /** One standard deviation of its errors, in SI units of the quantity; null where it was not used. */
  noise: z.number().nullable(),
  noiseOrigin: z.enum(['estimated', 'given', 'assumed']).nullable(),
  /** Added to what it reads; for an accelerometer bias and tilt together, as read at standstill. */
  bias: z.number().nullable(),
  /** rad, mounting tilt or grade that such a bias amounts to; null but for accelerometers. */
  tilt_rad: z.number().nullable(),
  /** True value over reading, for wheel speeds; null else. */
  scale: z.number().nullable(),
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
  /** The headings in one line: files with the same line take the same remembered columns. Null where there are none. */
  headings: z.string().nullable(),
  sensors: z.array(sensorResult),
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
  /** What the first stop lies over the line through the others; null under four runs. */
  warmUp_m: estimate.nullable(),
  /** Stops that don't count, with the reason. */
  leftOut: z.array(z.strictObject({ log: z.string(), number: z.number().int(), reason: z.string() })),
  /** Stops that a person rejected or restored. */
  judged: z.array(
    z.strictObject({
      log: z.string(),
      number: z.number().int(),
      verdict: z.enum(['rejected', 'restored']),
      reason: z.string(),
    }),
  ),
});

/** The difference with something taken out that was not the change. */
const adjustedDifference = z.strictObject({
  difference_m: estimate,
  /** What was taken out, each with its own effect. */
  takenOut: z.array(z.strictObject({ what: z.string(), effect: estimate, unit: z.string() })),
  sentence: z.string(),
});

/** What a repeat of the old set-up or a reference car adds. */
const control = z.strictObject({
  kind: z.enum(['repeat', 'reference-car']),
  count: z.number().int(),
  /** What moved without the change: repeat minus before, or the reference car's after minus before. */
  drift_m: estimate,
  /** The difference with that taken out. */
  difference_m: estimate,
  sentence: z.string(),
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
  /** By drawing both sets anew from themselves, 10,000 times; too narrow for small sets, and said so. */
  bootstrap_m: estimate.nullable(),
  /** With the trend over the runs, the warm-up and the recorded conditions taken out; null where nothing can be. */
  adjusted: adjustedDifference.nullable(),
  control: control.nullable(),
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
  /** Whether the difference may be something else than the change: then `advice` says what to drive. */
  confounded: z.boolean(),
  advice: z.array(z.string()),
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
export type StopJudgement = z.infer<typeof stopJudgement>;
export type SensorResult = z.infer<typeof sensorResult>;
export type StopResult = z.infer<typeof stopResult>;
export type LogReport = z.infer<typeof logReport>;
export type LogRefusal = z.infer<typeof logRefusal>;
export type Comparison = z.infer<typeof comparison>;
