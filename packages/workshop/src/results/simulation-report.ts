import { z } from 'zod';
import { assumedValue } from './assumed-value.ts';
import { estimate } from './estimate.ts';
import { warning } from './warning.ts';

/** One value a moment. */
const column = z.array(z.number());

/** Front-left, front-right, rear-left, rear-right; one list of moments each. */
const wheels = z.tuple([column, column, column, column]);

/** A simulated stop over time, central values: every list has one value a moment. */
export const simulationTrace = z.strictObject({
  time_s: column,
  speed_m_s: column,
  distance_m: column,
  deceleration_m_s2: column,
  /** Nose down positive. */
  pitch_rad: column,
  pedalForce_N: column,
  frontLinePressure_Pa: column,
  /** Nose to the left positive. */
  yawMoment_Nm: column,
  wheelSpeed_rad_s: wheels,
  /** 0 rolls freely, 1 is locked. */
  slip: wheels,
  load_N: wheels,
  brakeForce_N: wheels,
  brakeTorque_Nm: wheels,
  caliperPressure_Pa: wheels,
  faceTemperature_degC: wheels,
});

export const setUpSimulation = z.strictObject({
  id: z.string(),
  title: z.string(),
  sentence: z.string(),
  distance_m: estimate,
  time_s: estimate,
  meanDeceleration_m_s2: estimate,
  meanFullyDevelopedDeceleration_m_s2: estimate,
  peakDeceleration_m_s2: z.number(),
  /** Mean deceleration over that of the ideal stop, 1. */
  efficiency: estimate,
  limitedBy: z.enum(['tire grip', 'brake torque', 'rear lock', 'front lock']),
  /** How often a control let pressure off in one stop, both wheels of the axle together. */
  frontCycles: z.number().int(),
  rearCycles: z.number().int(),
  /** Part of the distance on which a wheel of the axle stood still, 1. */
  frontSlideShare: z.number(),
  rearSlideShare: z.number(),
  frontPeakTemperature_degC: estimate,
  rearPeakTemperature_degC: estimate,
  /** What the control's chance leaves open of the central distance: its standard error over stops that begin at other moments. */
  chance_m: z.number(),
  /** The quick stop's distance for the same push; null where the quick stop has no such foot. */
  quickDistance_m: z.number().nullable(),
  /** Where the energy of motion went, J. */
  energies_J: z.strictObject({
    kineticIn: z.number(),
    brakes: z.number(),
    tireSlip: z.number(),
    airDrag: z.number(),
    rolling: z.number(),
    driveline: z.number(),
    climb: z.number(),
    dampers: z.number(),
    left: z.number(),
  }),
  /** Null where it was not asked for. */
  trace: simulationTrace.nullable(),
});

/** What `simulate` answers: stops with all four wheels turning. */
export const simulationReport = z.strictObject({
  kind: z.literal('simulation-report'),
  version: z.literal(1),
  sentence: z.string(),
  job: z.string(),
  speed_m_s: z.number(),
  pedalForce_N: z.number(),
  /** The deceleration that the foot seeks; null where it presses as the job says. */
  soughtDeceleration_m_s2: z.number().nullable(),
  /** True where the foot stays down whatever locks. */
  lockedWheels: z.boolean(),
  surface: z.string(),
  draws: z.number().int(),
  seed: z.number().int(),
  sampling: z.enum(['latin-hypercube', 'sobol']),
  setUps: z.array(setUpSimulation),
  /** Against the first, paired draw by draw; negative stops shorter. */
  differences: z.array(z.strictObject({ setUp: z.string(), reference: z.string(), distance_m: estimate })),
  warnings: z.array(warning),
  assumed: z.array(assumedValue),
});

export type SimulationTrace = z.infer<typeof simulationTrace>;
export type SetUpSimulation = z.infer<typeof setUpSimulation>;
export type SimulationReport = z.infer<typeof simulationReport>;
