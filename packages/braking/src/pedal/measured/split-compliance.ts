import { linearPosterior, requireRange } from '@standstill/numerics';
import type { SetUp } from '../../set-up/set-up.ts';
import { axleVolumes, type AxleVolumes } from '../../travel/axle-volumes.ts';
import { travelPerVolume } from '../../travel/travel-per-volume.ts';
import type { PedalReading } from './pedal-reading.ts';

/** What takes travel and can be told apart by priors or by plugged corners only. */
export const splitParts = [
  'freePlay',
  'flex',
  'frontClearance',
  'rearClearance',
  'frontCalipers',
  'rearCalipers',
  'frontPads',
  'rearPads',
  'frontHoses',
  'rearHoses',
  'tubes',
  'fluid',
] as const;

export type SplitPart = (typeof splitParts)[number];

/** A reading with some corners shut off at their lines by a plug. */
export interface PluggedReading extends PedalReading {
  /** Front corners plugged, 0 to 2. */
  readonly frontPlugged: number;
  /** Rear corners plugged, 0 to 2. */
  readonly rearPlugged: number;
}

export interface SplitComplianceInput {
  /** In the state of the test. */
  readonly setUp: SetUp;
  readonly readings: readonly PluggedReading[];
  /** σ_s, m, one standard deviation of a measured travel. */
  readonly travelSpread: number;
  /** σ_F, one standard deviation of a measured force or pressure, as a share of it, 1. */
  readonly forceSpread: number;
  /** One standard deviation of what each part takes beforehand, as a share of it, 1. */
  readonly priorSpreads: Readonly<Record<SplitPart, number>>;
  /** V, m³, how much air at one axle is thought possible beforehand, one standard deviation. */
  readonly airSpread: number;
}

/** One part before and after the points were looked at. */
export interface SplitShare {
  readonly part: SplitPart | 'frontAir' | 'rearAir';
  /** m at the pedal pad at the hardest reading, before. */
  readonly prior: number;
  /** m, one standard deviation. */
  readonly priorSpread: number;
  /** m, after. */
  readonly posterior: number;
  /** m, one standard deviation. */
  readonly posteriorSpread: number;
  /** Spread after over spread before, 1: near 1 the points say nothing of this part by itself. */
  readonly narrowing: number;
}

export interface SplitCompliance {
  readonly parts: readonly SplitShare[];
  /** Greatest over least singular value of the parts' shapes, 1; Infinity where some are mixes of others. */
  readonly condition: number;
}

/** A spread that is nothing would leave a part no say at all. */
const leastSpread = 1e-6;

/**
 * Answers how measured points and what is known of the parts share the travel out among them.
 *
 * Equation: s_i = Σ k_j t_j(p_i), t_j the travel that the set-up gives part j (a plugged corner taken off its axle's
 * clearance, caliper, pads, hose and air), k_j with prior mean 1; air with prior mean as in the set-up; `linearPosterior`.
 * Assumes: priors independent and normal; hoses, pads and calipers rise almost alike with pressure, so that without
 * plugged corners the split is the priors' and not the points'. Lines and fluid of a plugged corner stay in.
 * Valid: 1 to 400 readings; plugged corners 0 to 2 an axle.
 *
 * @param input - set-up; readings with plugged corners; spreads of travel, m, and force, 1; priors, 1; spread of air, m³
 * @returns travel of each part at the hardest reading before and after, m; narrowing, 1; condition number, 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 */
export function splitCompliance(input: SplitComplianceInput): SplitCompliance {
  const { setUp, readings, priorSpreads, airSpread } = input;
  requireRange('measured points of the pedal', readings.length, '', 1, 400);
  requireRange('spread of the air at one axle', airSpread, 'm³', 1e-9, 1e-3);
  for (const { frontPlugged, rearPlugged } of readings) {
    requireRange('plugged front corners', frontPlugged, '', 0, 2);
    requireRange('plugged rear corners', rearPlugged, '', 0, 2);
  }
  const shapes = readings.map((reading) => splitTravels(setUp, reading));
  const names = [...splitParts, 'frontAir', 'rearAir'] as const;
  const priors = names.map((name) =>
    name === 'frontAir' || name === 'rearAir'
      ? { mean: (0.5 * setUp.fluid.trappedAir) / airUnit, spread: airSpread / airUnit }
      : { mean: 1, spread: Math.max(leastSpread, priorSpreads[name]) },
  );
  const { means, spreads, condition } = linearPosterior({
    columns: names.map((name) => shapes.map((shape) => shape[name])),
    values: readings.map(({ travel }) => travel),
    spreads: shapes.map((shape) => Math.hypot(input.travelSpread, input.forceSpread * shape.rise)),
    priors,
  });
  const hardest = hardestOf(setUp, readings);
  const parts = names.map((part, index): SplitShare => {
    const [size, prior] = [hardest[part], priors[index] ?? { mean: NaN, spread: NaN }];
    return {
      part,
      prior: prior.mean * size,
      priorSpread: prior.spread * size,
      posterior: (means[index] ?? NaN) * size,
      posteriorSpread: (spreads[index] ?? NaN) * size,
      narrowing: (spreads[index] ?? NaN) / prior.spread,
    };
  });
  return { parts, condition };
}

/** m³ of air behind one unit of its weight: of the size of a good bleed. */
const airUnit = 1e-6;

export type SplitTravels = Readonly<Record<SplitShare['part'] | 'rise', number>>;

/** The hardest reading, with no corner plugged. */
function hardestOf(setUp: SetUp, readings: readonly PluggedReading[]): SplitTravels {
  const hardest = readings.reduce((most, one) => (one.pedalForce > most.pedalForce ? one : most));
  return splitTravels(setUp, { ...hardest, frontPlugged: 0, rearPlugged: 0 });
}

/**
 * Answers how much travel the set-up gives each part at a reading.
 *
 * Equation: as `pedalTravel`, part by part and axle by axle; of air, for each cm³ at an axle.
 * Assumes: as `splitCompliance`.
 *
 * @param setUp - the set-up
 * @param reading - pressures, Pa, force, N, and plugged corners
 * @returns m at the pedal pad
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * splitTravels(exampleSetUp, { ...pedalReading(exampleSetUp, { pedalForce: 200, travel: 0.05 }), frontPlugged: 0, rearPlugged: 0 }).freePlay // => 0.006
 */
export function splitTravels(setUp: SetUp, reading: PluggedReading): SplitTravels {
  const { pedal, masterCylinder, frontBrake, rearBrake, fluid } = setUp;
  const rod = travelPerVolume(masterCylinder);
  const full = { ...fluid, trappedAir: 2 * airUnit };
  const front = axleVolumes({ brake: frontBrake, fluid: full, pressure: reading.front });
  const rear = axleVolumes({ brake: rearBrake, fluid: full, pressure: reading.rear });
  const open = {
    front: pedal.ratio * rod.front * (1 - reading.frontPlugged / 2),
    rear: pedal.ratio * rod.rear * (1 - reading.rearPlugged / 2),
  };
  const shared = (key: 'tubes' | 'fluid'): number =>
    pedal.ratio * (rod.front * front[key] + rod.rear * rear[key]);
  const flex = pedal.flex * reading.pedalForce;
  const rise =
    flex + elastic(front, open.front) + elastic(rear, open.rear) + shared('tubes') + shared('fluid');
  return {
    freePlay: pedal.freePlay,
    flex,
    frontClearance: open.front * front.clearance,
    rearClearance: open.rear * rear.clearance,
    frontCalipers: open.front * front.caliper,
    rearCalipers: open.rear * rear.caliper,
    frontPads: open.front * front.pads,
    rearPads: open.rear * rear.pads,
    frontHoses: open.front * front.hoses,
    rearHoses: open.rear * rear.hoses,
    tubes: shared('tubes'),
    fluid: shared('fluid'),
    frontAir: open.front * front.air,
    rearAir: open.rear * rear.air,
    rise,
  };
}

/** What rises about in step with pressure, so that an error of the force moves it by as much. */
function elastic({ caliper, pads, hoses }: AxleVolumes, travel: number): number {
  return travel * (caliper + pads + hoses);
}
