import type { Car, Foot, Road, SetUp } from '@standstill/braking';
import type { Job, JobSetUp } from '../job/job.ts';
import { airDensity } from './air-density.ts';
import { central } from './draw.ts';
import type { Draw } from './draw.ts';
import { settleAxle } from './settle-axle.ts';
import { partIn } from './part-in.ts';
import { settleLaden } from './settle-laden.ts';
import { settleParking } from './settle-parking.ts';
import type { Parking } from './settle-parking.ts';
import { settleFacts } from './settle-facts.ts';
import { settleAntilock, settleBooster, settleMasterCylinder, settleRearValve } from './settle-hydraulics.ts';

/** The question that one set-up is asked: plain numbers in SI. */
export interface Settled {
  readonly setUp: SetUp;
  readonly road: Road;
  readonly foot: Foot;
  /** m/s. */
  readonly speed: number;
  /** °C, both rotors before the first stop. */
  readonly startTemperature: number;
  /** s from the start of one repeated stop to the next. */
  readonly interval: number;
  /** The car with everybody and everything in it; the set-up's own is as tested. */
  readonly ladenCar: Car;
  /** What holds it when parked; null where nothing is known of it. */
  readonly parking: Parking | null;
  /** 1, greatest deceleration over g that motors take back; 0 where there are none. */
  readonly regeneration: number;
  /** 1, push over weight of a drive that creeps at idle; 0 where it does not. */
  readonly creep: number;
}

/** What is asked instead of the job's own conditions, SI. */
export interface Overrides {
  readonly speed?: number | undefined;
  readonly pedalForce?: number | undefined;
}

/**
 * Turns one set-up of a job into the plain numbers that the physics works with.
 *
 * @param job - the job
 * @param setUpId - id of the set-up
 * @param draw - which of the possible values to take; the central ones where absent
 * @param overrides - speed, m/s, and pedal force, N, to ask about instead of the job's
 * @returns set-up, road and foot, SI
 */
export function settle(job: Job, setUpId: string, draw: Draw = central, overrides: Overrides = {}): Settled {
  const jobSetUp = job.setUps.find(({ id }) => id === setUpId);
  if (jobSetUp === undefined) throw new RangeError(`the job has no set-up "${setUpId}"`);
  const conditions = settleFacts(job.conditions.facts, draw);
  const { grade, airTemperature, surfaceFactor, waterDepth, altitude } = conditions;
  const density = airDensity({ altitude, temperature: airTemperature });
  const setUp = settleSetUp(job, jobSetUp, draw, altitude);
  return {
    setUp,
    parking: settleParking(job, jobSetUp, draw),
    ladenCar: settleLaden(job.car.laden, setUp.car, draw),
    regeneration: job.car.regeneration === null ? 0 : draw(job.car.regeneration),
    creep: job.car.creep === null ? 0 : draw(job.car.creep),
    road: { surfaceFactor, waterDepth, grade, airTemperature, airDensity: density },
    foot: { force: overrides.pedalForce ?? conditions.pedalForce, rampTime: conditions.pedalRamp },
    speed: overrides.speed ?? conditions.speed,
    startTemperature: conditions.startTemperature,
    interval: draw(job.conditions.repeatedStops.interval),
  };
}

function settleSetUp(job: Job, setUp: JobSetUp, draw: Draw, altitude: number): SetUp {
  return {
    car: settleFacts(job.car.facts, draw),
    frontTire: settleFacts(partIn(job, setUp, 'frontTire', 'tire').facts, draw),
    rearTire: settleFacts(partIn(job, setUp, 'rearTire', 'tire').facts, draw),
    pedal: settleFacts(partIn(job, setUp, 'pedal', 'pedal').facts, draw),
    booster: settleBooster(job, setUp, draw, altitude),
    masterCylinder: settleMasterCylinder(job, setUp, draw),
    circuitSplit: setUp.circuitSplit,
    rearValve: settleRearValve(job, setUp, draw),
    antilock: settleAntilock(job, setUp, draw),
    fluid: settleFacts(partIn(job, setUp, 'fluid', 'fluid').facts, draw),
    frontBrake: settleAxle(job, setUp, 'front', draw),
    rearBrake: settleAxle(job, setUp, 'rear', draw),
  };
}
