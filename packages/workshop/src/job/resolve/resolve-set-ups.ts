import type { JobDocument, SetUpDocument } from '../document/job-document.ts';
import { emptiableSlots, partSlots } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import type { JobPart, JobSetUp } from '../job.ts';
import { nearestWord } from '../reading/nearest-word.ts';
import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import { shown } from '../reading/shown.ts';
import { assumedPart } from './assumed-part.ts';
import type { Filler } from './filler.ts';

const slotNames = Object.keys(partSlots) as PartSlot[];
const none = 'none';

interface Scene {
  readonly filler: Filler;
  readonly document: JobDocument;
  /** Grows by the assumed parts. */
  readonly parts: Record<string, JobPart>;
}

/** Every set-up with every slot filled, in the order of the document. */
export function resolveSetUps(
  filler: Filler,
  document: JobDocument,
  parts: Record<string, JobPart>,
): JobSetUp[] {
  const scene = { filler, document, parts };
  const ids = Object.keys(document.setUps);
  for (const id of ids) checkStated(scene, id);
  if (refuseCycles(scene, ids)) return [];
  return ids.map((id) => resolveSetUp(scene, id));
}

function resolveSetUp(scene: Scene, id: string): JobSetUp {
  const chain = chainOf(scene.document, id);
  const root = chain.at(-1) ?? id;
  const slots = Object.fromEntries(
    slotNames.map((slot) => [slot, slotOf(scene, chain, root, slot, id === root)]),
  );
  const setUp = setUpOf(scene.document, id);
  return {
    id,
    title: setUp.title,
    basedOn: setUp.basedOn ?? null,
    circuitSplit: circuitSplit(scene, chain, id === root),
    slots: slots as Record<PartSlot, string | null>,
  };
}

function slotOf(
  scene: Scene,
  chain: readonly string[],
  root: string,
  slot: PartSlot,
  atRoot: boolean,
): string | null {
  const stated = chain.map((id) => setUpOf(scene.document, id)[slot]).find((part) => part !== undefined);
  if (stated === none) return null;
  if (stated !== undefined) return stated;
  const assumed = assumedPart(scene.filler, root, slot, atRoot);
  if (assumed === 'needed') {
    if (atRoot) missingSlot(scene, root, slot);
    return null;
  }
  if (assumed === null) return null;
  scene.parts[assumed.id] ??= assumed;
  return assumed.id;
}

function circuitSplit(scene: Scene, chain: readonly string[], atRoot: boolean): JobSetUp['circuitSplit'] {
  const stated = chain
    .map((id) => setUpOf(scene.document, id).circuitSplit)
    .find((split) => split !== undefined);
  if (stated === undefined && atRoot) {
    const path = ['setUps', chain.at(-1) ?? '', 'circuitSplit'];
    scene.filler.assumedWord(
      path,
      'Circuit split',
      'front-rear',
      'not stated; matters only when a circuit is lost',
    );
  }
  return stated ?? 'front-rear';
}

/** The set-up and those that it is based on, itself first. */
function chainOf(document: JobDocument, id: string): string[] {
  const chain = [id];
  for (;;) {
    const next = document.setUps[chain.at(-1) ?? '']?.basedOn;
    if (next === undefined || !Object.hasOwn(document.setUps, next) || chain.includes(next)) return chain;
    chain.push(next);
  }
}

function setUpOf(document: JobDocument, id: string): SetUpDocument {
  const setUp = document.setUps[id];
  if (setUp === undefined) throw new TypeError(`no set-up ${id}`);
  return setUp;
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

function checkStated(scene: Scene, id: string): void {
  const setUp = setUpOf(scene.document, id);
  for (const slot of slotNames) checkSlot(scene, id, slot, setUp[slot]);
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
  if (partId === none) return missingSlot({ filler, document }, id, slot);
  const part = Object.hasOwn(document.parts, partId) ? document.parts[partId] : undefined;
  if (part === undefined) return unknownId(filler, path, 'unknown-part', partId, accepted);
  if (part.kind === kind) return;
  const found = `"${partId}", a ${part.kind}`;
  const message = `${pathText(path)} names ${found}; a ${kind} belongs there: ${accepted.join(', ') || 'none is in parts'}`;
  filler.findings.push({
    code: 'wrong-part-kind',
    path,
    at: 'value',
    found,
    accepted: accepted.join(', '),
    message,
  });
}

/** A name that nothing answers to, with the nearest that something does. */
export function unknownId(
  filler: Filler,
  path: DocumentPath,
  code: 'unknown-part' | 'unknown-set-up',
  id: string,
  known: readonly string[],
): void {
  const near = nearestWord(id, known);
  const what =
    code === 'unknown-part' ? 'a part that is not under parts' : 'a set-up that is not under setUps';
  const hint = near === null ? `there: ${known.join(', ') || 'none'}` : `did you mean "${near}"?`;
  const message = `${pathText(path)} names ${shown(id)}, ${what}; ${hint}`;
  filler.findings.push({
    code,
    path,
    at: 'value',
    found: shown(id),
    accepted: near ?? known.join(', '),
    message,
  });
}

function missingSlot(
  { filler, document }: Pick<Scene, 'filler' | 'document'>,
  id: string,
  slot: PartSlot,
): void {
  const { kind, title } = partSlots[slot];
  const fitting = Object.entries(document.parts).filter(([, part]) => part.kind === kind);
  const emptiable = (emptiableSlots as readonly PartSlot[]).includes(slot);
  const ids = [...fitting.map(([partId]) => partId), ...(emptiable ? [none] : [])].join(', ');
  const accepted = `the id of a part of kind ${kind}${ids === '' ? '' : `: ${ids}`}`;
  const message = `setUps.${id}.${slot} is missing: the ${title} can't be assumed; give ${accepted}`;
  filler.findings.push({
    code: 'missing',
    path: ['setUps', id, slot],
    at: 'key',
    found: 'nothing',
    accepted,
    message,
  });
}
