import type { PartDocument } from '../document/part-schemas.ts';
import type { JobPart } from '../job.ts';
import type { Filler } from './filler.ts';
import { resolveCaliper, resolvePad, resolveRotor } from './resolve-corner.ts';
import {
  resolveAntilock,
  resolveFluid,
  resolveHose,
  resolveRearValve,
  resolveTube,
} from './resolve-hydraulics.ts';
import { resolveBooster, resolveMasterCylinder, resolvePedal } from './resolve-pedal-box.ts';
import { resolveDrum } from './resolve-drum.ts';
import { resolveParkingBrake } from './resolve-parking-brake.ts';
import { resolveTire } from './resolve-tire.ts';

/** A part of the document with every fact known. */
export function resolvePart(filler: Filler, id: string, part: PartDocument): JobPart {
  switch (part.kind) {
    case 'tire':
      return resolveTire(filler, id, part);
    case 'pedal':
      return resolvePedal(filler, id, part);
    case 'booster':
      return resolveBooster(filler, id, part);
    case 'master-cylinder':
      return resolveMasterCylinder(filler, id, part);
    case 'rear-valve':
      return resolveRearValve(filler, id, part);
    case 'antilock':
      return resolveAntilock(filler, id, part);
    case 'fluid':
      return resolveFluid(filler, id, part);
    case 'caliper':
      return resolveCaliper(filler, id, part);
    case 'pad':
      return resolvePad(filler, id, part);
    case 'rotor':
      return resolveRotor(filler, id, part);
    case 'hose':
      return resolveHose(filler, id, part);
    case 'tube':
      return resolveTube(filler, id, part);
    case 'drum':
      return resolveDrum(filler, id, part);
    case 'parking-brake':
      return resolveParkingBrake(filler, id, part);
  }
}
