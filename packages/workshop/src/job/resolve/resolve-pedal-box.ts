import { boosterClasses, masterCylinderClasses, pedalClass } from '@standstill/braking';
import { boosterFacts } from '../facts/booster-facts.ts';
import { masterCylinderFacts } from '../facts/master-cylinder-facts.ts';
import { pedalFacts } from '../facts/pedal-facts.ts';
import type {
  BalanceBarPart,
  BoosterPart,
  HydraulicBoosterPart,
  MasterCylinderPart,
  PedalPart,
  TandemCylinderPart,
  VacuumBoosterPart,
} from '../job.ts';
import { fillFacts } from './fill-facts.ts';
import { fromClass } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';
import { refuseUnused } from './refuse-unused.ts';

export function resolvePedal(filler: Filler, id: string, part: PartOf<'pedal'>): PedalPart {
  const facts = fillFacts(filler, {
    facts: pedalFacts,
    stated: part,
    path: ['parts', id],
    fallbacks: {
      efficiency: () => fromClass(pedalClass.title, pedalClass.efficiency),
      freePlay: () => fromClass(pedalClass.title, pedalClass.freePlay),
      flex: () => fromClass(pedalClass.title, pedalClass.flex),
      availableTravel: () => fromClass(pedalClass.title, pedalClass.availableTravel),
    },
  });
  return { kind: 'pedal', id, title: part.title, className: null, facts };
}

export function resolveBooster(filler: Filler, id: string, part: PartOf<'booster'>): BoosterPart {
  const about = { kind: 'booster', id, title: part.title, className: null } as const;
  return part.type === 'vacuum'
    ? { ...about, type: 'vacuum', facts: vacuumFacts(filler, id, part) }
    : { ...about, type: 'hydraulic', facts: hydraulicFacts(filler, id, part) };
}

function vacuumFacts(filler: Filler, id: string, stated: PartOf<'booster'>): VacuumBoosterPart['facts'] {
  const path = ['parts', id];
  const { vacuum } = boosterClasses;
  const { greatestAssist: _unused, ...facts } = boosterFacts;
  refuseUnused(filler, { stated, keys: ['greatestAssist'], path, why: 'a vacuum booster' });
  return fillFacts(filler, {
    facts,
    stated,
    path,
    fallbacks: {
      gain: () => fromClass(vacuum.title, vacuum.gain),
      jumpInForce: () => fromClass(vacuum.title, vacuum.jumpInForce),
      diaphragmDiameter: 'needed',
      vacuum: () => fromClass(vacuum.title, vacuum.vacuum),
      efficiency: () => fromClass(vacuum.title, vacuum.efficiency),
    },
  });
}

function hydraulicFacts(
  filler: Filler,
  id: string,
  stated: PartOf<'booster'>,
): HydraulicBoosterPart['facts'] {
  const path = ['parts', id];
  const { gain, greatestAssist } = boosterFacts;
  const keys = ['jumpInForce', 'diaphragmDiameter', 'vacuum', 'efficiency'] as const;
  refuseUnused(filler, { stated, keys, path, why: 'a hydraulic booster' });
  const fallbacks = { gain: hydraulicGain, greatestAssist: 'needed' } as const;
  return fillFacts(filler, { facts: { gain, greatestAssist }, stated, path, fallbacks });
}

const { hydraulic } = boosterClasses;
const hydraulicGain = (): Fallback => fromClass(hydraulic.title, hydraulic.gain);

export function resolveMasterCylinder(
  filler: Filler,
  id: string,
  part: PartOf<'master-cylinder'>,
): MasterCylinderPart {
  const about = { kind: 'master-cylinder', id, title: part.title, className: null } as const;
  return part.type === 'balance-bar'
    ? { ...about, type: 'balance-bar', facts: balanceBarFacts(filler, id, part) }
    : { ...about, type: 'tandem', facts: tandemFacts(filler, id, part) };
}

function balanceBarFacts(
  filler: Filler,
  id: string,
  stated: PartOf<'master-cylinder'>,
): BalanceBarPart['facts'] {
  const path = ['parts', id];
  refuseUnused(filler, { stated, keys: ['bore'], path, why: 'two cylinders with a balance bar' });
  const { bore: _unused, ...facts } = masterCylinderFacts;
  const { title, stroke, efficiency, frontForceShare } = masterCylinderClasses.balanceBar;
  const fallbacks = {
    frontBore: 'needed',
    rearBore: 'needed',
    frontForceShare: () => fromClass(title, frontForceShare),
    stroke: () => fromClass(title, stroke),
    efficiency: () => fromClass(title, efficiency),
  } as const;
  return fillFacts(filler, { facts, stated, path, fallbacks });
}

function tandemFacts(
  filler: Filler,
  id: string,
  stated: PartOf<'master-cylinder'>,
): TandemCylinderPart['facts'] {
  const path = ['parts', id];
  const keys = ['frontBore', 'rearBore', 'frontForceShare'] as const;
  refuseUnused(filler, { stated, keys, path, why: 'a tandem cylinder' });
  const { bore, stroke, efficiency } = masterCylinderFacts;
  const { tandem } = masterCylinderClasses;
  const fallbacks = {
    bore: 'needed',
    stroke: () => fromClass(tandem.title, tandem.stroke),
    efficiency: () => fromClass(tandem.title, tandem.efficiency),
  } as const;
  return fillFacts(filler, { facts: { bore, stroke, efficiency }, stated, path, fallbacks });
}
