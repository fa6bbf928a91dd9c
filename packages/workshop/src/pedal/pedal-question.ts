import { driverLimits, regulationDistance, steadyDeceleration, vacuumAtAltitude } from '@standstill/braking';
import type { Job, JobSetUp } from '../job/job.ts';
import { settle } from '../settle/settle.ts';
import type { Settled } from '../settle/settle.ts';
import type { Draw } from '../settle/draw.ts';
import { settlePedalDetails } from '../settle/settle-pedal-details.ts';
import type { PedalDetails } from '../settle/settle-pedal-details.ts';

/** The pedal that is asked about, SI. */
export interface SettledPedal extends Settled {
  readonly details: PedalDetails;
  /** Pa, air where the car is. */
  readonly ambientPressure: number;
}

/**
 * One set-up of a job with all that its pedal is asked.
 *
 * @param job - the job
 * @param setUp - one of its set-ups
 * @param draw - which of the possible values to take
 * @param pedalForce - N, instead of the job's
 * @returns the numbers, SI
 */
export function settlePedal(
  job: Job,
  setUp: JobSetUp,
  draw: Draw,
  pedalForce: number | undefined,
): SettledPedal {
  const altitude = draw(job.conditions.facts.altitude);
  return {
    ...settle(job, setUp.id, draw, { pedalForce }),
    details: settlePedalDetails(job, setUp, draw),
    ambientPressure: vacuumAtAltitude({ seaLevelVacuum: 101_325, altitude }),
  };
}

const hundred = 100 / 3.6;
/** m per km/h of the rule: what it grants for the build-up. */
const granted = 0.1 * 100;

/** The yardstick for a failed circuit or assist. */
export const reference = {
  /** m. */
  distance: regulationDistance('fmvss135-circuit-failed', hundred),
  /** N. */
  pedalForce: driverLimits.lawfulForce.high,
  /** m/s², steady after the granted build-up. */
  deceleration: steadyDeceleration({
    speed: hundred,
    distance: regulationDistance('fmvss135-circuit-failed', hundred),
    buildUp: granted,
  }),
  source:
    'FMVSS 135 S7.10 and S7.11 (168 m from 100 km/h at no more than 500 N with a failed circuit or assist; from memory) and UN R13-H secondary braking (2.44 m/s²; from memory): a yardstick, not an approval',
} as const;

/** m from 100 km/h at a steady deceleration, m/s². */
export function distanceFromHundred(deceleration: number): number {
  return deceleration > 0 ? granted + hundred ** 2 / (2 * deceleration) : Infinity;
}
