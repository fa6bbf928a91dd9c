import { z } from 'zod';
import { assumedValue } from './assumed-value.ts';
import { estimate } from './estimate.ts';
import { warning } from './warning.ts';

/** What a push of one state of the brakes does. */
const state = {
  /** Travel at the force that gives the reference deceleration; at 500 N where none does. */
  travel_m: estimate,
  travelLeft_m: estimate,
  /** Force of at most 500 N that the pedal has travel for. */
  pedalForceThere_N: estimate,
  /** Pressures at that force; 0 in a dead circuit. */
  frontLinePressure_Pa: estimate,
  rearLinePressure_Pa: estimate,
  /** Reached at that force, no wheel past its tire. */
  deceleration_m_s2: estimate,
  /** From 100 km/h at that deceleration, with the 0.10 m per km/h of the rule for the build-up. */
  distanceFrom100_m: estimate.nullable(),
  /** For the reference deceleration; null where 1000 N does not reach it. */
  pedalForceAtReference_N: estimate.nullable(),
  /** The reference deceleration is out of reach of 500 N, or of the travel. */
  fallsShort: z.boolean(),
  fallsShortShare: z.number(),
} as const;

const circuitLost = z.strictObject({
  circuit: z.enum(['front', 'rear', 'first-diagonal', 'second-diagonal']),
  title: z.string(),
  ...state,
  extraTravel_m: estimate,
  /** Pedal or live chamber is at its end before the pressure of the reference is there. */
  bottoms: z.boolean(),
  bottomsShare: z.number(),
  /** Single strokes are taken as half of the full stroke each. */
  strokesAssumed: z.boolean(),
});

const travelPart = z.strictObject({ part: z.string(), title: z.string(), travel_m: estimate });

const measuredPedal = z.strictObject({
  engine: z.enum(['running', 'off']),
  points: z.array(
    z.strictObject({
      pedalForce_N: z.number(),
      frontLinePressure_Pa: z.number(),
      travel_m: z.number(),
      /** By the job's parts. */
      expectedTravel_m: z.number(),
      plugged: z.array(z.string()),
      used: z.boolean(),
    }),
  ),
  /** One standard deviation. */
  travelSpread_m: z.number(),
  forceSpreadShare: z.number(),
  /** From the points alone, with the spread of the pressures behind them and the error of the straight line. */
  offset_m: estimate,
  air_m3: estimate,
  compliance_m3_Pa: estimate,
  /** What the parts of the job have; compliance as the secant to the hardest push. */
  expectedOffset_m: estimate,
  expectedAir_m3: estimate,
  expectedCompliance_m3_Pa: estimate,
  /** Air that the fit finds in the parts' own travel beyond what they have: their stretch is no straight line. */
  straightLineBias_m3: z.number(),
  /** Of the three shapes; past 100 they are hardly told apart. */
  conditionNumber: z.number(),
  /** Scatter about the fit over the stated spreads. */
  scatter: z.number(),
  airTold: z.boolean(),
  /** Travel at the hardest point by part, before and after the points were looked at. */
  split: z.array(
    z.strictObject({
      part: z.string(),
      title: z.string(),
      prior_m: estimate,
      posterior_m: estimate,
      /** Width after over width before: near 1 the points say nothing of this part by itself. */
      narrowing: z.number(),
      told: z.boolean(),
    }),
  ),
  /** Of the parts' shapes; null where some are mixes of others. */
  splitConditionNumber: z.number().nullable(),
  verdict: z.string(),
  cannotTell: z.string(),
});

export const pedalReport = z.strictObject({
  kind: z.literal('pedal-report'),
  version: z.literal(1),
  /** The answer, first. */
  sentence: z.string(),
  job: z.string(),
  setUp: z.string(),
  title: z.string(),
  pedalForce_N: z.number(),
  surface: z.string(),
  draws: z.number().int(),
  drawsLeftOut: z.number().int(),
  seed: z.number().int(),
  push: z.strictObject({
    travel_m: estimate,
    travelShare: estimate,
    travelLeft_m: estimate,
    strokeReserve_m: estimate,
    frontLinePressure_Pa: estimate,
    rearLinePressure_Pa: estimate,
    bottoms: z.boolean(),
    bottomsShare: z.number(),
  }),
  /** They sum to the travel of the push. */
  parts: z.array(travelPart),
  curve: z.array(
    z.strictObject({
      pedalForce_N: z.number(),
      travel_m: estimate,
      frontLinePressure_Pa: estimate,
      rearLinePressure_Pa: estimate,
    }),
  ),
  /** Null without booster, or where it never gives all it has. */
  boosterRunOut_N: estimate.nullable(),
  firmness: z.array(
    z.strictObject({
      /** Null where it is asked at a force. */
      deceleration_m_s2: z.number().nullable(),
      pedalForce_N: estimate,
      firmness_N_m: estimate,
    }),
  ),
  reference: z.strictObject({
    deceleration_m_s2: z.number(),
    pedalForce_N: z.number(),
    distanceFrom100_m: z.number(),
    source: z.string(),
  }),
  circuitsLost: z.array(circuitLost),
  /** Null without booster. */
  assistLost: z.strictObject(state).nullable(),
  /** At the job's force with the engine off; null without a vacuum booster. */
  pushesWithoutEngine: z
    .array(
      z.strictObject({
        push: z.number().int(),
        vacuum_Pa: estimate,
        frontLinePressure_Pa: estimate,
        travel_m: estimate,
      }),
    )
    .nullable(),
  /** More travel on the first push after a bend. */
  knockBack_m: estimate,
  knockBackShare: estimate,
  /** More travel with the fluid at this temperature. */
  hotFluid: z.strictObject({ temperature_C: z.number(), extraTravel_m: estimate }),
  /** Less travel of a fast push, whose air is stiffer (exponent 1.4). */
  fastPush_m: estimate,
  wornPads: z.strictObject({
    wearLimit_m: z.number(),
    demand_m3: estimate,
    reservoir_m3: estimate,
    emptyShare: z.number(),
  }),
  measured: measuredPedal.nullable(),
  warnings: z.array(warning),
  assumed: z.array(assumedValue),
});

export type PedalReport = z.infer<typeof pedalReport>;
export type MeasuredPedal = z.infer<typeof measuredPedal>;
export type CircuitLostResult = z.infer<typeof circuitLost>;
