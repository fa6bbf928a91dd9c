import type { JobDocument } from '../document/job-document.ts';
import { none, partSlots, rearDiscSlots } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import type { JobPart, JobSetUp } from '../job.ts';
import { assumedPart, assumedPartId } from './assumed-part.ts';
import { checkSetUps } from './check-set-ups.ts';
import type { Filler } from './filler.ts';
import { missingSlot } from './missing-slot.ts';
import { checkParking, parkingOf } from './parking-of.ts';
import { rearBrakeOf } from './rear-brake.ts';
import { chainOf, setUpOf } from './set-up-chain.ts';

const slotNames = Object.keys(partSlots) as PartSlot[];

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
  if (!checkSetUps(filler, document)) return [];
  const ids = Object.keys(document.setUps);
  const resolved = new Map(rootsFirst(document, ids).map((id) => [id, resolveSetUp(scene, id)]));
  return ids.flatMap((id) => resolved.get(id) ?? []);
}

/** What is assumed is listed at the set-up that the others are based on, wherever it stands. */
function rootsFirst(document: JobDocument, ids: readonly string[]): string[] {
  const depth = (id: string): number => chainOf(document, id).length;
  return ids.toSorted((a, b) => depth(a) - depth(b));
}

function resolveSetUp(scene: Scene, id: string): JobSetUp {
  const chain = chainOf(scene.document, id);
  const root = chain.at(-1) ?? id;
  const rear = rearBrakeOf(scene.document, chain);
  const slots = Object.fromEntries(
    slotNames.map((slot) => {
      if (slot === 'rearDrum') return [slot, rear.drum];
      if (slot === 'parkingBrake') return [slot, parkingOf(scene.document, chain)];
      const isRearDisc = (rearDiscSlots as readonly PartSlot[]).includes(slot);
      if (!isRearDisc) return [slot, slotOf(scene, chain, root, slot, id === root)];
      return [slot, rear.drum === null ? rearDiscSlot(scene, chain, rear.discsFrom, slot) : null];
    }),
  );
  checkParking(scene.filler, scene.document, chain);
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
  const shared = assumedPartId(slot);
  if (scene.parts[shared] !== undefined) return shared;
  const assumed = assumedPart(scene.filler, root, slot, atRoot);
  if (assumed === 'needed') {
    if (atRoot) missingSlot(scene.filler, scene.document, root, slot);
    return null;
  }
  if (assumed === null) return null;
  scene.parts[assumed.id] = assumed;
  return assumed.id;
}

/** A part of a rear disc brake. What a set-up before its drums had there is no longer on the car. */
function rearDiscSlot(
  scene: Scene,
  chain: readonly string[],
  discsFrom: readonly string[],
  slot: PartSlot,
): string | null {
  const [id = ''] = chain;
  const stated = discsFrom
    .map((from) => setUpOf(scene.document, from)[slot])
    .find((part) => part !== undefined);
  if (stated !== undefined && stated !== none) return stated;
  if (stated === undefined && (chain.length === 1 || discsFrom.length < chain.length))
    missingSlot(scene.filler, scene.document, id, slot);
  return null;
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
