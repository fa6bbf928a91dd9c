import { markAssumed } from '../../shared/quantity/mark-assumed.ts';
import {
  partSlots,
  type JobDocument,
  type PartDocument,
  type PartSlot,
  type SetUpDocument,
} from '@standstill/workshop';

/** The part id that a set-up has in a slot, by itself or through the one it is based on; undefined where nothing is stated. */
export function partInSlot(document: JobDocument, setUpId: string, slot: PartSlot): string | undefined {
  const seen = new Set<string>();
  for (let id: string | undefined = setUpId; id !== undefined && !seen.has(id);) {
    seen.add(id);
    const setUp: SetUpDocument | undefined = document.setUps[id];
    if (setUp?.[slot] !== undefined) return setUp[slot];
    id = setUp?.basedOn;
  }
  return undefined;
}

/** An id that nothing has yet: 'front-pad', 'front-pad-2', … */
export function freeId(wanted: string, taken: object): string {
  let id = wanted;
  for (let number = 2; id in taken; number++) id = `${wanted}-${number}`;
  return id;
}

/** Adds a set-up that starts as a copy of the first. */
export function addSetUp(document: JobDocument): { readonly document: JobDocument; readonly id: string } {
  const id = freeId('proposed', document.setUps);
  const basedOn = Object.keys(document.setUps)[0];
  const setUp: SetUpDocument = basedOn === undefined ? { title: 'Proposed' } : { title: 'Proposed', basedOn };
  return { document: { ...document, setUps: { ...document.setUps, [id]: setUp } }, id };
}

/** Why a set-up can't be taken out; null where it can. */
export function keptBecause(document: JobDocument, id: string): string | null {
  if (Object.keys(document.setUps).length === 1) return 'it is the only one';
  const child = Object.values(document.setUps).find((setUp) => setUp.basedOn === id);
  if (child) return `“${child.title}” is based on it`;
  return document.runs?.some((run) => run.setUp === id) ? 'measured runs belong to it' : null;
}

/** Puts a part of its own into a slot: a copy of the one there, every value of the copy marked as assumed. */
export function addPart(document: JobDocument, setUpId: string, slot: PartSlot): JobDocument {
  const { kind, title } = partSlots[slot];
  const present = partInSlot(document, setUpId, slot);
  const model =
    (present && document.parts[present]) || Object.values(document.parts).find((part) => part.kind === kind);
  const id = freeId(`new-${kind}`, document.parts);
  const part = model ? assumedCopy(model, `New ${title}`) : emptyPart(kind, `New ${title}`);
  return {
    ...document,
    parts: { ...document.parts, [id]: part },
    setUps: { ...document.setUps, [setUpId]: { ...document.setUps[setUpId]!, [slot]: id } },
  };
}

/** Nothing is known about a new part yet: what it takes over from another is a guess. */
function assumedCopy(model: PartDocument, title: string): PartDocument {
  const { note: _note, ...rest } = model;
  return { ...markAssumed(rest), title };
}

/** The least that the document accepts; the rest is filled from stated classes or asked for. */
function emptyPart(kind: PartDocument['kind'], title: string): PartDocument {
  const types: { readonly [K in PartDocument['kind']]?: string } = {
    booster: 'vacuum',
    caliper: 'floating',
    rotor: 'solid',
    drum: 'simplex',
    'parking-brake': 'caliper',
  };
  const type = types[kind];
  return (type === undefined ? { kind, title } : { kind, title, type }) as PartDocument;
}
