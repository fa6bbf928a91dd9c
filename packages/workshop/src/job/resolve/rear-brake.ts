import type { JobDocument, SetUpDocument } from '../document/job-document.ts';
import { none, rearDiscSlots } from '../document/part-slots.ts';
import { setUpOf } from './set-up-chain.ts';

/** Which kind of rear brake a set-up ends up with, and from which set-ups of its chain. */
export interface RearBrake {
  /** Id of the drum; null where the rear has discs. */
  readonly drum: string | null;
  /** The set-ups from which the parts of a rear disc brake are taken: none past one that had drums instead. */
  readonly discsFrom: readonly string[];
}

/**
 * Answers whether a set-up has drums or discs at the rear: the nearest set-up of its chain that says either decides, so
 * that one may swap discs for drums and another one back.
 *
 * @param document - the job's document
 * @param chain - the set-up, the one it is based on, and so on
 * @returns the kind of rear brake
 */
export function rearBrakeOf(document: JobDocument, chain: readonly string[]): RearBrake {
  const deciding = chain.find(
    (id) => statesDrum(setUpOf(document, id)) || statesDiscs(setUpOf(document, id)),
  );
  if (deciding !== undefined && statesDrum(setUpOf(document, deciding)))
    return { drum: setUpOf(document, deciding).rearDrum ?? null, discsFrom: [] };
  const cut = chain.findIndex((id) => statesDrum(setUpOf(document, id)));
  return { drum: null, discsFrom: cut < 0 ? chain : chain.slice(0, cut) };
}

/** A set-up that names drums. */
export function statesDrum({ rearDrum }: SetUpDocument): boolean {
  return rearDrum !== undefined && rearDrum !== none;
}

/** A set-up that names a part of a rear disc brake, or says that there is no drum. */
export function statesDiscs(setUp: SetUpDocument): boolean {
  return setUp.rearDrum === none || rearDiscSlots.some((slot) => setUp[slot] !== undefined);
}
