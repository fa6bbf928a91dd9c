import type { Job, JobSetUp } from '../job/job.ts';
import type { Draw } from './draw.ts';
import { partOrNone } from './part-in.ts';
import { settleFacts } from './settle-facts.ts';

interface ParkingPull {
  /** N, of hand or foot. */
  readonly force: number;
  readonly operatedBy: 'hand' | 'foot';
  /** 1, cable pull of both wheels over that force. */
  readonly leverRatio: number;
  /** 1. */
  readonly cableEfficiency: number;
}

/** What holds a set-up when it is parked, in plain numbers; what it pulls at the rear brake is that brake's own. */
export type Parking =
  | (ParkingPull & { readonly kind: 'caliper'; readonly clampRatio: number })
  | (ParkingPull & {
      readonly kind: 'hat';
      readonly shoeLeverRatio: number;
      /** C*, 1. */
      readonly brakeFactor: number;
      /** m. */
      readonly drumDiameter: number;
    })
  | (ParkingPull & {
      readonly kind: 'drum';
      readonly shoeLeverRatio: number;
      /** C*, 1, of the rear drum at a lining friction of 0.38. */
      readonly brakeFactor: number;
      /** m. */
      readonly drumDiameter: number;
    });

/** The parking brake of a set-up; null where none is known. */
export function settleParking(job: Job, setUp: JobSetUp, draw: Draw): Parking | null {
  const part = partOrNone(job, setUp, 'parkingBrake', 'parking-brake');
  if (part === null) return null;
  const { operatedBy } = part;
  if (part.type === 'caliper') return { kind: 'caliper', operatedBy, ...settleFacts(part.facts, draw) };
  if (part.type === 'drum-in-hat') return { kind: 'hat', operatedBy, ...settleFacts(part.facts, draw) };
  const drum = partOrNone(job, setUp, 'rearDrum', 'drum');
  if (drum === null) return null;
  const { brakeFactor, diameter } = drum.facts;
  return {
    kind: 'drum',
    operatedBy,
    ...settleFacts(part.facts, draw),
    brakeFactor: draw(brakeFactor),
    drumDiameter: draw(diameter),
  };
}
