import { listOf } from '../../words/list-of.ts';
import type { JobDocument, SetUpDocument } from '../document/job-document.ts';
import { emptiableSlots, none, partSlots, rearDiscSlots } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import { pathText } from '../reading/path-text.ts';
import type { Filler } from './filler.ts';
import { missingSlot } from './missing-slot.ts';
import { statesDrum } from './rear-brake.ts';
import { chainOf, setUpOf } from './set-up-chain.ts';
import { unknownId } from './unknown-id.ts';
import { unknownPart } from './unknown-part.ts';

interface Scene {
  readonly filler: Filler;
  readonly document: JobDocument;
}

/**
 * Finds what set-ups name that is not there, is of the wrong kind, or goes round in a circle.
 *
 * @param filler - takes the findings
 * @param document - the job's document
 * @returns false where set-ups go round in a circle, so that none of them can be resolved
 */
export function checkSetUps(filler: Filler, document: JobDocument): boolean {
  const ids = Object.keys(document.setUps);
  for (const id of ids) checkStated({ filler, document }, id);
  return !refuseCycles({ filler, document }, ids);
}

function checkStated(scene: Scene, id: string): void {
  const setUp = setUpOf(scene.document, id);
  for (const slot of Object.keys(partSlots) as PartSlot[]) checkSlot(scene, id, slot, setUp[slot]);
  refuseBothRearBrakes(scene.filler, id, setUp);
  const { basedOn } = setUp;
  if (basedOn === undefined || Object.hasOwn(scene.document.setUps, basedOn)) return;
  unknownId(
    scene.filler,
    ['setUps', id, 'basedOn'],
    'unknown-set-up',
    basedOn,
    Object.keys(scene.document.setUps),
  );
}

/** Drums and discs on one axle: one of the two is a mistake. */
function refuseBothRearBrakes(filler: Filler, id: string, setUp: SetUpDocument): void {
  const discs = rearDiscSlots.filter((slot) => setUp[slot] !== undefined);
  if (!statesDrum(setUp) || discs.length === 0) return;
  const path = ['setUps', id, 'rearDrum'];
  const found = `a drum beside ${listOf(discs)}`;
  const accepted = 'either rearDrum or the parts of a disc brake';
  const message = `${pathText(path)} is ${found}; a rear axle has ${accepted}, take one of the two out`;
  filler.findings.push({ code: 'contradiction', path, at: 'key', found, accepted, message });
}

function checkSlot(
  { filler, document }: Scene,
  id: string,
  slot: PartSlot,
  partId: string | undefined,
): void {
  if (partId === undefined) return;
  const path = ['setUps', id, slot];
  const { kind } = partSlots[slot];
  const fitting = Object.entries(document.parts).filter(([, part]) => part.kind === kind);
  const emptiable = (emptiableSlots as readonly PartSlot[]).includes(slot);
  const accepted = [...fitting.map(([fittingId]) => fittingId), ...(emptiable ? [none] : [])];
  if (emptiable && partId === none) return;
  if (partId === none) return missingSlot(filler, document, id, slot);
  const part = Object.hasOwn(document.parts, partId) ? document.parts[partId] : undefined;
  if (part === undefined) {
    const ids = fitting.map(([fittingId]) => fittingId);
    return unknownPart(filler, { setUpId: id, slot, written: partId, fitting: ids });
  }
  if (part.kind === kind) return;
  const found = `"${partId}", a ${part.kind}`;
  const message = `${pathText(path)} names ${found}; a ${kind} belongs there: ${accepted.join(', ') || 'none is in parts'}`;
  filler.findings.push({
    code: 'wrong-part-kind',
    path,
    at: 'value',
    found,
    accepted: accepted.join(', ') || `a ${kind}`,
    message,
  });
}

function refuseCycles({ filler, document }: Scene, ids: readonly string[]): boolean {
  const told = new Set<string>();
  for (const id of ids) {
    const chain = chainOf(document, id);
    const next = document.setUps[chain.at(-1) ?? '']?.basedOn;
    if (next === undefined || !chain.includes(next) || chain.some((one) => told.has(one))) continue;
    for (const one of chain) told.add(one);
    const round = [...chain.slice(chain.indexOf(next)), next].join(' → ');
    const message = `setUps.${next}.basedOn goes round in a circle: ${round}; one of them must stand by itself`;
    const path = ['setUps', next, 'basedOn'];
    filler.findings.push({
      code: 'set-up-cycle',
      path,
      at: 'value',
      found: round,
      accepted: 'a set-up that stands by itself',
      message,
    });
  }
  return told.size > 0;
}
