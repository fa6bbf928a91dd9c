import { vacuumAtAltitude } from '@standstill/braking';
import type { Antilock, Booster, MasterCylinder, RearValve } from '@standstill/braking';
import type { Job, JobSetUp } from '../job/job.ts';
import type { Draw } from './draw.ts';
import { partIn, partOrNone } from './part-in.ts';
import { settleFacts } from './settle-facts.ts';

export function settleBooster(job: Job, setUp: JobSetUp, draw: Draw, altitude: number): Booster {
  const part = partOrNone(job, setUp, 'booster', 'booster');
  if (part === null) return { kind: 'none' };
  if (part.type === 'hydraulic') return { kind: 'hydraulic', ...settleFacts(part.facts, draw) };
  const { gain, jumpInForce, diaphragmDiameter, vacuum, efficiency } = settleFacts(part.facts, draw);
  const isMeasured = part.facts.vacuum.origin === 'measured'; // where the car is: altitude is in it already
  return {
    kind: 'vacuum',
    gain,
    jumpInForce,
    diaphragmArea: (Math.PI / 4) * diaphragmDiameter ** 2,
    vacuum: isMeasured ? vacuum : vacuumAtAltitude({ seaLevelVacuum: vacuum, altitude }),
    efficiency,
  };
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
