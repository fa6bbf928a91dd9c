import { partSlots } from '../job/document/part-slots.ts';
import type { PartSlot } from '../job/document/part-slots.ts';
import type { Job } from '../job/job.ts';

/** What a number belongs to. */
export interface KnownOwner {
  /** Path in the job document: `car`, `conditions`, `parts.tires`, `setUps.as-found.fluid`. */
  readonly path: string;
  /** As a table names it: `Car`, `Road tires`. */
  readonly title: string;
  /** Inside a sentence: `the car`, `"Road tires"`. */
  readonly words: string;
}

/**
 * What a number of the job belongs to: the car, the road, or a part.
 *
 * @param job - the job
 * @param path - of the number
 * @returns the owner with its names
 */
export function knownOwner(job: Job, path: string): KnownOwner {
  if (path.startsWith('car.')) return { path: 'car', title: 'Car', words: 'the car' };
  if (path.startsWith('conditions.'))
    return { path: 'conditions', title: 'Road and weather', words: 'the road' };
  const part = Object.values(job.parts).find(({ id }) => path.startsWith(`parts.${id}.`));
  if (part !== undefined) return { path: `parts.${part.id}`, title: part.title, words: `"${part.title}"` };
  const slot = (Object.keys(partSlots) as PartSlot[]).find((name) => path.includes(`.${name}.`));
  const owner = slot === undefined ? path : path.slice(0, path.indexOf(`.${slot}.`) + slot.length + 1);
  const title = slot === undefined ? path : partSlots[slot].title;
  return { path: owner, title: title.charAt(0).toUpperCase() + title.slice(1), words: `the ${title}` };
}
