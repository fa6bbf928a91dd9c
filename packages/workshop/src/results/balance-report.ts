import { z } from 'zod';
import { assumedValue } from './assumed-value.ts';
import { estimate } from './estimate.ts';
import { warning } from './warning.ts';

const loadState = z.enum(['as-tested', 'laden']);
const axle = z.enum(['front', 'rear', 'both', 'none']);
/** One number for each deceleration; null where foot or road does not reach it. */
const column = z.array(z.number().nullable());

/** Curves over deceleration; every column is as long as `deceleration_g`. */
const balanceCurves = z.strictObject({
  deceleration_g: z.array(z.number()),
  idealFrontForceOverWeight: column,
  idealRearForceOverWeight: column,
  installedFrontForceOverWeight: column,
  installedRearForceOverWeight: column,
  /** Friction that each axle uses (f1 and f2 of UN R13-H Annex 5), with the ends of the 95 % interval. */
  frontAdhesion: column,
  frontAdhesionLow: column,
  frontAdhesionHigh: column,
  rearAdhesion: column,
  rearAdhesionLow: column,
  rearAdhesionHigh: column,
  /** Deceleration over the greater of the two. */
  brakingEfficiency: column,
  /** Most friction that Annex 5 allows an axle, from z = 0.10 to 0.52; null outside. */
  annexFiveLimit: column,
  /** Most friction that FMVSS 135 allows the rear axle where wheel torque is measured; null outside 0.15 to 0.80. */
  torqueWheelLimit: column,
});

/** One rule: kept with the central values or not, from where on not, and the share of the draws that keep it. */
const rule = z.strictObject({
  kept: z.boolean(),
  brokenFrom_g: z.number().nullable(),
  keptShare: z.number(),
});

const annexFiveResult = z.strictObject({
  /** The rear axle never uses more friction than the front one from 0.15 to 0.80 g. */
  rearBelowFront: rule,
  /** Neither axle uses more friction than z >= 0.1 + 0.7 (k - 0.2) allows, for k from 0.2 to 0.8. */
  adhesionWithinLimit: rule,
  /** FMVSS 135 S7.4: the rear axle stays under z = 0.9 k from 0.15 to 0.80 g. */
  rearUnderTorqueWheelLine: rule,
  examinedTo_g: z.number(),
  /** True where the car has ABS: then the regulation judges it otherwise. */
  yardstickOnly: z.boolean(),
});

/** A rear-first lock on any road from wet to dry grip, ABS and EBD failed. */
const rearFirstResult = z.strictObject({
  /** Share of draws in which the rear locks first with pads warm or cold, 0 to 1. */
  share: z.number(),
  /** The same with the pads as hot as the repeated stops make them; null where none are driven. */
  shareHot: z.number().nullable(),
  /** Where it does with the central values: the pads it takes, and the decelerations; null where it never does. */
  central: z
    .strictObject({
      pads: z.enum(['warm', 'cold', 'hot']),
      lowest_g: z.number(),
      highest_g: z.number(),
      /** It takes regeneration or creep. */
      byDriveAlone: z.boolean(),
    })
    .nullable(),
});

/** What happens where one front brake gives nothing, at a foot that asks for 0.5 g. */
const pullResult = z.strictObject({
  asked_g: z.number(),
  /** Greater of both sides; turns the nose to the side of the sound brake. */
  yawMoment_Nm: estimate,
  left_g: estimate,
});

/** How the parking brake holds; null grades where no parking brake is known. */
const parkingResult = z.strictObject({
  operatedBy: z.enum(['hand', 'foot']),
  force_N: z.number(),
  /** Steepest grades, rise over run. */
  gradeByBrake: estimate,
  gradeByTires: estimate,
  gradeHeld: estimate,
  /** Against FMVSS 135: a grade of 20 %, both ways. */
  holdsTwentyPercent: z.boolean(),
  holdsShare: z.number(),
});

export const balanceState = z.strictObject({
  state: loadState,
  mass_kg: estimate,
  frontLoadShare: estimate,
  centerOfGravityHeight_m: estimate,
  /** On the road asked about, ABS and EBD failed, at rest or at speed, whichever is worse. */
  firstToLock: axle,
  /** Share of draws in which that axle is the first, 0 to 1. */
  firstToLockShare: z.number(),
  lockDeceleration_g: estimate.nullable(),
  frontLock_g: estimate.nullable(),
  rearLock_g: estimate.nullable(),
  frontForceShare: estimate,
  efficiencyAtLock: estimate.nullable(),
  rearFirst: rearFirstResult,
  annexFive: annexFiveResult,
  pull: pullResult.nullable(),
  parking: parkingResult.nullable(),
  curves: balanceCurves,
});

export const setUpBalance = z.strictObject({
  id: z.string(),
  title: z.string(),
  /** Which axle locks first, at what deceleration, in which state, how sure. */
  sentence: z.string(),
  annexSentence: z.string(),
  parkingSentence: z.string(),
  states: z.array(balanceState),
});

export const balanceDifference = z.strictObject({
  id: z.string(),
  against: z.string(),
  /** Paired draws: set-up minus `against`. */
  states: z.array(
    z.strictObject({
      state: loadState,
      frontForceShare: estimate,
      lockDeceleration_g: estimate.nullable(),
      efficiencyAtLock: estimate.nullable(),
    }),
  ),
  verdict: z.string(),
});

export const balanceReport = z.strictObject({
  kind: z.literal('balance-report'),
  version: z.literal(1),
  /** The answer, first. */
  sentence: z.string(),
  annexSentence: z.string(),
  job: z.string(),
  speed_m_s: z.number(),
  surface: z.string(),
  draws: z.number().int(),
  seed: z.number().int(),
  setUps: z.array(setUpBalance),
  differences: z.array(balanceDifference),
  warnings: z.array(warning),
  assumed: z.array(assumedValue),
});

export type BalanceReport = z.infer<typeof balanceReport>;
export type SetUpBalance = z.infer<typeof setUpBalance>;
export type BalanceState = z.infer<typeof balanceState>;
export type BalanceDifference = z.infer<typeof balanceDifference>;
