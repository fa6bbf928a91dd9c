import { vacuumAtAltitude } from '@standstill/braking';
import type { Antilock, Booster, MasterCylinder, RearValve } from '@standstill/braking';
import type { Job, JobSetUp, VacuumBoosterPart } from '../job/job.ts';
import type { Draw } from './draw.ts';
import { partIn, partOrNone } from './part-in.ts';
import { settleFacts } from './settle-facts.ts';

export function settleBooster(job: Job, setUp: JobSetUp, draw: Draw, altitude: number): Booster {
  const part = partOrNone(job, setUp, 'booster', 'booster');
  if (part === null) return { kind: 'none' };
  if (part.type === 'hydraulic') return { kind: 'hydraulic', ...settleFacts(part.facts, draw) };
  const { gain, jumpInForce, diaphragmDiameter, vacuum, efficiency } = settleFacts(part.facts, draw);
  return {
    kind: 'vacuum',
    gain,
    jumpInForce,
    diaphragmArea: diaphragmArea(diaphragmDiameter),
    vacuum: vacuumThere(part, vacuum, altitude),
    efficiency,
  };
}

/** m², of a diameter, m. */
export function diaphragmArea(diameter: number): number {
  return (Math.PI / 4) * diameter ** 2;
}

/** Pa, where the car is, m above the sea; a measured vacuum, Pa, has the altitude in it already. */
export function vacuumThere(part: VacuumBoosterPart, vacuum: number, altitude: number): number {
  const isMeasured = part.facts.vacuum.origin === 'measured';
  return isMeasured ? vacuum : vacuumAtAltitude({ seaLevelVacuum: vacuum, altitude });
}

export function settleMasterCylinder(job: Job, setUp: JobSetUp, draw: Draw): MasterCylinder {
  const part = partIn(job, setUp, 'masterCylinder', 'master-cylinder');
  return part.type === 'tandem'
    ? { kind: 'tandem', ...settleFacts(part.facts, draw) }
    : { kind: 'balance-bar', ...settleFacts(part.facts, draw) };
}

export function settleRearValve(job: Job, setUp: JobSetUp, draw: Draw): RearValve {
  const part = partOrNone(job, setUp, 'rearValve', 'rear-valve');
  return part === null ? { kind: 'none' } : { kind: 'proportioning', ...settleFacts(part.facts, draw) };
}

export function settleAntilock(job: Job, setUp: JobSetUp, draw: Draw): Antilock {
  const part = partOrNone(job, setUp, 'antilock', 'antilock');
  if (part === null) return { kind: 'none', electronicRearLimit: false };
  const { electronicRearLimit } = part;
  return { kind: 'threshold', ...settleFacts(part.facts, draw), electronicRearLimit };
}
