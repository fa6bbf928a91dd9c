import type { JobDocument } from '../document/job-document.ts';
import { none } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import { pathText } from '../reading/path-text.ts';
import type { Filler } from './filler.ts';
import { rearBrakeOf } from './rear-brake.ts';
import { setUpOf } from './set-up-chain.ts';

/** The rear parts that a parking brake sits in: where one of them is changed, what is known of it no longer holds. */
const sitsIn: Readonly<Record<'drum-in-hat' | 'caliper' | 'drum', readonly PartSlot[]>> = {
  'drum-in-hat': ['rearRotor', 'rearDrum'],
  caliper: ['rearCaliper', 'rearDrum'],
  drum: ['rearDrum', 'rearCaliper', 'rearRotor'],
};

/**
 * Answers which parking brake a set-up has: the nearest one stated, unless a set-up after it changes the rear parts
 * that it sits in.
 *
 * @param document - the job's document
 * @param chain - the set-up, the one it is based on, and so on
 * @returns id of the part; null where nothing is known of it
 */
export function parkingOf(document: JobDocument, chain: readonly string[]): string | null {
  const stated = chain.findIndex((id) => setUpOf(document, id).parkingBrake !== undefined);
  const part = stated < 0 ? undefined : setUpOf(document, chain[stated] ?? '').parkingBrake;
  if (part === undefined || part === none || !Object.hasOwn(document.parts, part)) return null;
  const found = document.parts[part];
  if (found?.kind !== 'parking-brake') return null;
  const after = chain.slice(0, stated).map((id) => setUpOf(document, id));
  // Other drums with the same shoes and levers only change what they can be asked for.
  const drumForDrum = found.type === 'drum' && rearBrakeOf(document, chain).drum !== null;
  const isChanged = after.some((setUp) => sitsIn[found.type].some((slot) => setUp[slot] !== undefined));
  return isChanged && !drumForDrum ? null : part;
}

/** A parking brake that can't be in the rear brake that the same set-up has. */
export function checkParking(filler: Filler, document: JobDocument, chain: readonly string[]): void {
  const [id = ''] = chain;
  const partId = setUpOf(document, id).parkingBrake;
  const part =
    partId !== undefined && Object.hasOwn(document.parts, partId) ? document.parts[partId] : undefined;
  if (part?.kind !== 'parking-brake') return;
  const hasDrum = rearBrakeOf(document, chain).drum !== null;
  if (hasDrum === (part.type === 'drum')) return;
  const path = ['setUps', id, 'parkingBrake'];
  const found = `"${partId}", of type ${part.type}`;
  const accepted = hasDrum
    ? 'a parking brake of type drum'
    : 'a parking brake of type drum-in-hat or caliper';
  const message = `${pathText(path)} names ${found}, but the rear has ${hasDrum ? 'drums' : 'discs'}; accepted is ${accepted}`;
  filler.findings.push({ code: 'contradiction', path, at: 'value', found, accepted, message });
}
