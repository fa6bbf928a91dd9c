import type { PartKind } from '../job/document/part-schemas.ts';
import { partSlots } from '../job/document/part-slots.ts';
import type { PartSlot } from '../job/document/part-slots.ts';
import type { Job, JobPart, JobSetUp } from '../job/job.ts';

type PartOfKind<K extends PartKind> = Extract<JobPart, { kind: K }>;

/** The part that stands in a slot of a set-up; reading a job made sure that there is one of the kind. */
export function partIn<K extends PartKind>(
  job: Job,
  setUp: JobSetUp,
  slot: PartSlot,
  kind: K,
): PartOfKind<K> {
  const part = partOrNone(job, setUp, slot, kind);
  if (part === null) throw new TypeError(`set-up "${setUp.id}" has no ${partSlots[slot].title}`);
  return part;
}

/** The same for slots that may be empty. */
export function partOrNone<K extends PartKind>(
  job: Job,
  setUp: JobSetUp,
  slot: PartSlot,
  kind: K,
): PartOfKind<K> | null {
  const id = setUp.slots[slot];
  const part = id === null ? undefined : job.parts[id];
  return part !== undefined && isKind(part, kind) ? part : null;
}

function isKind<K extends PartKind>(part: JobPart, kind: K): part is PartOfKind<K> {
  return part.kind === kind;
}
