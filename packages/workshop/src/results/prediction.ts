import { z } from 'zod';
import { assumedValue } from './assumed-value.ts';
import { estimate } from './estimate.ts';
import { warning } from './warning.ts';

/** One curve point of the front/rear balance picture; forces over weight, so that both axes are dimensionless. */
const balancePoint = z.strictObject({
  /** z, deceleration over g. */
  deceleration_g: z.number(),
  frontForceOverWeight: z.number(),
  rearForceOverWeight: z.number(),
  /** Adhesion used by each axle (f1, f2 of UN R13-H Annex 5). */
  frontAdhesion: z.number(),
  rearAdhesion: z.number(),
});

export const balanceResult = z.strictObject({
  ideal: z.array(balancePoint),
  installed: z.array(balancePoint),
  firstToLock: z.enum(['front', 'rear', 'both', 'none']),
  /** z at which the first axle locks on this road with ABS and EBD taken as failed; null where the foot can't lock it. */
  lockDeceleration_g: estimate.nullable(),
  /** Share of brake force at the front when the first axle locks, 1. */
  frontForceShare: z.number(),
  /** Share of draws in which the rear locks first on this road or any other up to dry grip, 0 to 1. */
  rearFirstShare: z.number(),
  /** The same with the pads as hot as the repeated stops make them; null where none are asked for. */
  rearFirstShareHot: z.number().nullable(),
  /** First of the repeated stops in which the central values have the rear first; null where there is none. */
  rearFirstFromStop: z.number().int().nullable(),
  /** Deceleration over the adhesion that it takes when the first axle locks, 1 at best; null where nothing locks. */
  efficiencyAtLock: z.number().nullable(),
});

/** What a foot does that stops pressing at the tires' limit, as a driver without ABS has to. */
const footAtLimit = z.strictObject({
  pedalForce_N: estimate,
  pedalTravel_m: estimate,
  pedalTravelShare: estimate,
  frontLinePressure_Pa: estimate,
  rearLinePressure_Pa: estimate,
});

export const setUpPrediction = z.strictObject({
  id: z.string(),
  title: z.string(),
  distance_m: estimate,
  time_s: estimate,
  meanDeceleration_m_s2: estimate,
  /** What limits the steady part of the stop. */
  limitedBy: z.enum(['tire grip', 'brake torque', 'rear lock', 'front lock']),
  /** Pedal force at which the tires, not the brakes, become the limit; null where 1000 N does not reach it. */
  pedalForceAtLimit_N: estimate.nullable(),
  /** Share of the draws in which 1000 N does not reach it; they count as 1000 N in the interval. */
  limitBeyondFootShare: z.number(),
  /** Force up to the job's that the pedal has travel for; the distance holds for it. */
  pedalForceThere_N: z.number(),
  /** The pedal reaches the floor before the pressure of this foot, or of the tires' limit without ABS, is there. */
  pedalBottoms: z.boolean(),
  /** Share of draws in which it does, 0 to 1. */
  pedalBottomsShare: z.number(),
  /** That the job's pedal force asks for, also where the pedal does not have it. */
  pedalTravel_m: estimate,
  pedalTravelShare: estimate,
  /** At the force that the pedal has travel for. */
  frontLinePressure_Pa: estimate,
  rearLinePressure_Pa: estimate,
  hasBooster: z.boolean(),
  boosterRunOut: z.boolean(),
  /** Null with ABS, and where the foot does not get past the tires' limit. */
  atTiresLimit: footAtLimit.nullable(),
  /** Hottest interface of one stop from the job's speed and start temperature. */
  frontRotorPeak_C: estimate,
  rearRotorPeak_C: estimate,
  /** Fluid behind the pistons through the repeated stops and while the car stands after them; null where none are asked for. */
  fluid: z
    .strictObject({
      highest_C: estimate,
      /** At its age, at the pressure of the air; central values. */
      boiling_C: z.number(),
      /** Share of draws in which it boils, 0 to 1. */
      boilsShare: z.number(),
    })
    .nullable(),
  /** Temperatures before each of the job's repeated stops and distance of each: the fade picture. */
  repeatedStops: z.array(
    z.strictObject({
      stop: z.number().int(),
      distance_m: z.number(),
      frontRotorStart_C: z.number(),
      /** Of the hotter axle, until the next stop; after the last one while the car stands. */
      fluidPeak_C: z.number(),
      frontRotorPeak_C: z.number(),
      rearRotorPeak_C: z.number(),
      /** Above what rotor or pad figures are stated for: distance and temperatures are a guess. */
      beyondModel: z.boolean(),
    }),
  ),
  balance: balanceResult,
});

export const setUpDifference = z.strictObject({
  id: z.string(),
  against: z.string(),
  /** Paired draws: set-up minus `against`; negative is shorter. */
  distance_m: estimate,
  /** Null where one of the two does not come to rest in its row. */
  lastRepeatedStop_m: estimate.nullable(),
  pedalTravel_m: estimate,
  pedalForceAtLimit_N: estimate.nullable(),
  /** Which changed part slots buy which distance: a Shapley split that sums to the whole; central values. */
  byPart: z.array(z.strictObject({ part: z.string(), title: z.string(), distance_m: z.number() })),
  /** Variance of the difference with the shared inputs drawn once for both, and as if drawn apart; null without draws. */
  pairing: z
    .strictObject({
      pairedVariance_m2: z.number(),
      unpairedVariance_m2: z.number(),
      sentence: z.string(),
    })
    .nullable(),
  verdict: z.string(),
});

/** Where the distance of one set-up goes above the ideal stop, as a Shapley split. */
export const stopBudgetResult = z.strictObject({
  id: z.string(),
  ideal_m: z.number(),
  total_m: z.number(),
  shares: z.array(z.strictObject({ effect: z.string(), title: z.string(), distance_m: z.number() })),
  sentence: z.string(),
});

export const prediction = z.strictObject({
  kind: z.literal('prediction'),
  version: z.literal(1),
  /** The answer, first. */
  sentence: z.string(),
  job: z.string(),
  speed_m_s: z.number(),
  pedalForce_N: z.number(),
  surface: z.string(),
  draws: z.number().int(),
  seed: z.number().int(),
  /** How the draws are spread over the uncertain numbers. */
  sampling: z.enum(['latin-hypercube', 'sobol']),
  setUps: z.array(setUpPrediction),
  differences: z.array(setUpDifference),
  budgets: z.array(stopBudgetResult),
  warnings: z.array(warning),
  assumed: z.array(assumedValue),
});

export type Prediction = z.infer<typeof prediction>;
export type SetUpPrediction = z.infer<typeof setUpPrediction>;
export type SetUpDifference = z.infer<typeof setUpDifference>;
export type BalanceResult = z.infer<typeof balanceResult>;
export type StopBudgetResult = z.infer<typeof stopBudgetResult>;
