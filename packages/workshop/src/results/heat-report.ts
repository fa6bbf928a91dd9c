import { z } from 'zod';
import { assumedValue } from './assumed-value.ts';
import { estimate } from './estimate.ts';
import { warning } from './warning.ts';

/** One thing that must not get too hot: pads by the rotors' rubbing faces, fluid behind the pistons. */
export const heatLimit = z.strictObject({
  what: z.enum(['front pads', 'rear pads', 'front fluid', 'rear fluid']),
  highest_C: estimate,
  /** Pads: where their friction has fallen to 80 % of its best; null where their table ends before. Fluid: its boiling point at its age. */
  limit_C: estimate.nullable(),
  /** Limit less the highest; below 0 it is passed. Null where there is no limit. */
  margin_K: estimate.nullable(),
  /** Share of the draws in which it is passed, 0 to 1. */
  passedShare: z.number(),
  /** First stop or snub in which it is passed, or after which, while the car drives on or stands: with the central values, the interval from the draws that pass it. */
  passedInStop: estimate.nullable(),
});

const axleHighest = z.strictObject({
  /** Rotor's rubbing face. */
  interface_C: estimate,
  /** Ring, its heat spread evenly. */
  bulk_C: estimate,
  /** Pad, mean of its friction material. */
  pad_C: estimate,
  fluid_C: estimate,
  /** When the fluid is at its hottest, from the start of the schedule; central values. */
  fluidHottestAt_s: z.number(),
});

const axleAtStop = z.strictObject({
  bulkAtStart_C: z.number(),
  interfacePeak_C: z.number(),
  padAtEnd_C: z.number(),
  /** Hottest from the first touch to the next stop, or to the end of the schedule. */
  fluidPeak_C: z.number(),
});

/** One stop or snub, with the central values. */
export const heatStop = z.strictObject({
  stop: z.number().int(),
  start_s: z.number(),
  from_m_s: z.number(),
  to_m_s: z.number(),
  /** Null where the car does not come to rest. */
  distance_m: z.number().nullable(),
  time_s: z.number().nullable(),
  meanDeceleration_m_s2: z.number(),
  /** The foot's, or the greatest that a held deceleration asked for. */
  pedalForce_N: z.number(),
  /** Of the first alike: its deceleration under the same foot, or the first's pedal force over this one's. */
  shareOfFirst: z.number(),
  /** False where a held deceleration asked more than the tires or a foot of 1000 N can give. */
  isWithinReach: z.boolean(),
  front: axleAtStop,
  rear: axleAtStop,
});

const courseAxle = z.strictObject({
  interface_C: z.array(z.number()),
  bulk_C: z.array(z.number()),
  pad_C: z.array(z.number()),
  fluid_C: z.array(z.number()),
});

/** Over time with the central values, thinned to a few hundred nodes; peaks are kept. */
export const heatCourse = z.strictObject({
  time_s: z.array(z.number()),
  speed_m_s: z.array(z.number()),
  front: courseAxle,
  rear: courseAxle,
});

export const setUpHeat = z.strictObject({
  id: z.string(),
  title: z.string(),
  sentence: z.string(),
  front: axleHighest,
  rear: axleHighest,
  fluid: z.strictObject({
    age_s: estimate,
    /** Share by volume. */
    water: estimate,
    dryBoiling_C: estimate,
    wetBoiling_C: estimate,
    /** At its age, at the pressure of the air. */
    boiling_C: estimate,
  }),
  limits: z.array(heatLimit),
  /** Of the last stop: null where the schedule has none. */
  last: z.strictObject({ shareOfFirst: estimate, pedalForce_N: estimate }).nullable(),
  /** How many of these stops the brakes bear before something is too hot; only for rows of equal stops. */
  headroom: z
    .strictObject({
      stops: estimate,
      /** Null where nothing gets too hot in as many stops as were looked at. */
      first: z.string().nullable(),
      looked: z.number().int(),
    })
    .nullable(),
  isFinished: z.boolean(),
  stops: z.array(heatStop),
  course: heatCourse,
});

export const heatReport = z.strictObject({
  kind: z.literal('heat-report'),
  version: z.literal(1),
  /** The answer, first. */
  sentence: z.string(),
  job: z.string(),
  schedule: z.enum(['stops', 'burnish', 'heating-snubs', 'hot-stops', 'descent', 'bed-in', 'laps']),
  /** `8 stops from 60 mph every 35 s`. */
  scheduleText: z.string(),
  speed_m_s: z.number(),
  pedalForce_N: z.number(),
  draws: z.number().int(),
  seed: z.number().int(),
  setUps: z.array(setUpHeat),
  warnings: z.array(warning),
  assumed: z.array(assumedValue),
});

export type HeatLimit = z.infer<typeof heatLimit>;
export type HeatStop = z.infer<typeof heatStop>;
export type HeatCourseResult = z.infer<typeof heatCourse>;
export type SetUpHeat = z.infer<typeof setUpHeat>;
export type HeatReport = z.infer<typeof heatReport>;
