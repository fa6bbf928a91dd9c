import { z } from 'zod';
import { assumedValue } from './assumed-value.ts';
import { estimate } from './estimate.ts';
import { setUpDifference } from './prediction.ts';
import { warning } from './warning.ts';

/** Shares of the variance, 1: alone, and alone or together with others. */
const indices = { first: estimate, total: estimate } as const;

export const measureNext = z.strictObject({
  /** Path in the job document. */
  path: z.string(),
  title: z.string(),
  /** What it is a number of: the car, the road, a part. */
  of: z.string(),
  origin: z.enum(['measured', 'specified', 'assumed']),
  /** True where it is measured already, and the mean of two measurements is what narrows the interval. */
  again: z.boolean(),
  /** First-order index: share of the variance that knowing it exactly would take away, on average. */
  first: estimate,
  /** Total index: share of the variance that it takes part in. */
  total: estimate,
  /** Share of the width of the interval that measuring it as well as such things are measured would take away. */
  intervalRemovedShare: z.number(),
  now_m: estimate,
  /** Should the measurement come out at what is taken now. */
  then_m: estimate,
  sentence: z.string(),
});

export const sensitivityResult = z.strictObject({
  /** Rows of the two samples that had an answer throughout. */
  rows: z.number().int(),
  variance_m2: z.number(),
  numbers: z.array(z.strictObject({ path: z.string(), title: z.string(), of: z.string(), ...indices })),
  /** All other uncertain numbers together; null where the answer does not vary. */
  rest: z.strictObject({ count: z.number().int(), ...indices }).nullable(),
  parts: z.array(z.strictObject({ path: z.string(), title: z.string(), ...indices })),
});

/** Where the distance goes above the ideal stop: a Shapley split with intervals; central values sum to the whole. */
export const limitsBudget = z.strictObject({
  ideal_m: estimate,
  total_m: estimate,
  shares: z.array(z.strictObject({ effect: z.string(), title: z.string(), distance_m: estimate })),
  /** Draws behind the intervals. */
  draws: z.number().int(),
  sentence: z.string(),
});

export const setUpLimits = z.strictObject({
  id: z.string(),
  title: z.string(),
  /** What holds the car back, first. */
  sentence: z.string(),
  /** What else is to be known of it: the force at the tires' limit, what heat adds; may be empty. */
  details: z.string(),
  limit: z.enum(['tire grip', 'brake torque', 'pedal effort', 'pedal travel', 'balance', 'heat']),
  /** Share of the draws in which the tires are the limit of one stop, 0 to 1. */
  tiresLimitShare: z.number(),
  distance_m: estimate,
  pedalForceAtLimit_N: estimate.nullable(),
  pedalForceThere_N: z.number(),
  pedalTravelShare: estimate,
  firstToLock: z.enum(['front', 'rear', 'both', 'none']),
  /** Last of the repeated stops over the first, central values; null where there is no row or it is not driven to its end. */
  lastOverFirst: z.number().nullable(),
  budget: limitsBudget,
  measureNext: z.array(measureNext),
  sensitivity: sensitivityResult,
});

export const limitsDifference = z.strictObject({
  id: z.string(),
  against: z.string(),
  /** Set-up minus `against`; negative is shorter. */
  distance_m: estimate,
  /** Variance of the difference with the shared inputs drawn once for both, and as if drawn apart; null without draws. */
  pairing: setUpDifference.shape.pairing,
  /** Which changed part buys which distance, with intervals; central values sum to the whole. */
  byPart: z.array(z.strictObject({ part: z.string(), title: z.string(), distance_m: estimate })),
  /** Draws behind the intervals of the parts. */
  byPartDraws: z.number().int(),
  sentence: z.string(),
  measureNext: z.array(measureNext),
  sensitivity: sensitivityResult,
});

export const limitsReport = z.strictObject({
  kind: z.literal('limits-report'),
  version: z.literal(1),
  /** Dangers, and what holds the car back now. */
  sentence: z.string(),
  job: z.string(),
  speed_m_s: z.number(),
  pedalForce_N: z.number(),
  surface: z.string(),
  draws: z.number().int(),
  seed: z.number().int(),
  /** How the draws are spread over the uncertain numbers. */
  sampling: z.enum(['latin-hypercube', 'sobol']),
  setUps: z.array(setUpLimits),
  differences: z.array(limitsDifference),
  warnings: z.array(warning),
  assumed: z.array(assumedValue),
});

export type MeasureNext = z.infer<typeof measureNext>;
export type SensitivityResult = z.infer<typeof sensitivityResult>;
export type LimitsBudget = z.infer<typeof limitsBudget>;
export type SetUpLimits = z.infer<typeof setUpLimits>;
export type LimitsDifference = z.infer<typeof limitsDifference>;
export type LimitsReport = z.infer<typeof limitsReport>;
