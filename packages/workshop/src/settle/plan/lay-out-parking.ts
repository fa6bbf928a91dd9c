import type { Job, JobSetUp } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { partOrNone } from '../part-in.ts';
import type { Parking } from '../settle-parking.ts';
import type { Refill } from './refill.ts';

interface LayOutParkingInput {
  readonly job: Job;
  readonly setUp: JobSetUp;
  /** With the central values. */
  readonly fresh: Parking | null;
  readonly refill: Refill;
}

/** Puts a parking brake down for refilling. */
export function layOutParking({ job, setUp, fresh, refill }: LayOutParkingInput): Parking | null {
  const part = partOrNone(job, setUp, 'parkingBrake', 'parking-brake');
  if (part === null || fresh === null) return fresh;
  for (const [field, known] of Object.entries<Known>(part.facts)) refill.take(known, fresh, field);
  const drum = partOrNone(job, setUp, 'rearDrum', 'drum');
  if (fresh.kind !== 'drum' || drum === null) return fresh;
  refill.take(drum.facts.brakeFactor, fresh, 'brakeFactor');
  refill.take(drum.facts.diameter, fresh, 'drumDiameter');
  return fresh;
}
