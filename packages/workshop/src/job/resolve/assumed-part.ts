import { assumableSlots, partSlots } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import type { JobPart } from '../job.ts';
import { Filler } from './filler.ts';
import { resolveFluid, resolveHose, resolveTube } from './resolve-hydraulics.ts';

/** Set-ups that leave a slot out share one assumed part, so that it makes no difference between them. */
export function assumedPartId(slot: PartSlot): string {
  return `assumed:${slot}`;
}

/**
 * The part to take where a set-up names none: null where the car is taken to have nothing there, `needed` where
 * nothing can be taken. Listed once, at the set-up that the others are based on.
 */
export function assumedPart(
  filler: Filler,
  setUpId: string,
  slot: PartSlot,
  list: boolean,
): JobPart | null | 'needed' {
  if (!(assumableSlots as readonly PartSlot[]).includes(slot)) return 'needed';
  const path = ['setUps', setUpId, slot];
  const into = list ? filler : new Filler();
  const { title, kind } = partSlots[slot];
  const id = assumedPartId(slot);
  if (kind === 'rear-valve') return nothing(into, path, title, 'not stated');
  if (kind === 'drum' || kind === 'parking-brake') return null; // discs are stated then; parking is called unknown
  if (kind === 'antilock') return nothing(into, path, title, 'not stated; the safer of the two');
  if (kind === 'fluid') return resolveFluid(into, id, { kind, title: 'assumed fluid' }, path);
  if (kind === 'hose') return resolveHose(into, id, { kind, title: `assumed ${title}` }, path);
  if (kind === 'tube') return resolveTube(into, id, { kind, title: `assumed ${title}` }, path);
  return 'needed';
}

function nothing(filler: Filler, path: readonly string[], title: string, reason: string): null {
  filler.assumedWord(path, title.charAt(0).toUpperCase() + title.slice(1), 'none', reason);
  return null;
}
