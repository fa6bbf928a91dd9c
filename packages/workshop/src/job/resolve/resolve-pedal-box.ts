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
import {
  balanceBarDetails,
  boosterDetails,
  primaryFeeds,
  sumOfStrokes,
  tandemDetails,
} from './resolve-pedal-details.ts';
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
    ? vacuumBooster(filler, id, part, about)
    : { ...about, type: 'hydraulic', facts: hydraulicFacts(filler, id, part) };
}

function vacuumBooster(
  filler: Filler,
  id: string,
  part: PartOf<'booster'>,
  about: Pick<VacuumBoosterPart, 'kind' | 'id' | 'title' | 'className'>,
): VacuumBoosterPart {
  const facts = vacuumFacts(filler, id, part);
  return {
    ...about,
    type: 'vacuum',
    facts,
    details: boosterDetails(filler, id, part, facts.diaphragmDiameter),
  };
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
  const keys = [
    'jumpInForce',
    'diaphragmDiameter',
    'vacuum',
    'efficiency',
    'vacuumVolume',
    'deadVolume',
  ] as const;
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
  return part.type === 'balance-bar' ? balanceBar(filler, id, part, about) : tandem(filler, id, part, about);
}

type CylinderAbout = Pick<TandemCylinderPart, 'kind' | 'id' | 'title' | 'className'>;

function balanceBar(
  filler: Filler,
  id: string,
  part: PartOf<'master-cylinder'>,
  about: CylinderAbout,
): BalanceBarPart {
  const facts = balanceBarFacts(filler, id, part);
  return { ...about, type: 'balance-bar', facts, details: balanceBarDetails(filler, id, part) };
}

function tandem(
  filler: Filler,
  id: string,
  part: PartOf<'master-cylinder'>,
  about: CylinderAbout,
): TandemCylinderPart {
  const facts = tandemFacts(filler, id, part);
  const details = tandemDetails(filler, id, part, facts.stroke);
  return { ...about, type: 'tandem', facts, details, primaryFeeds: primaryFeeds(filler, id, part) };
}

function balanceBarFacts(
  filler: Filler,
  id: string,
  stated: PartOf<'master-cylinder'>,
): BalanceBarPart['facts'] {
  const path = ['parts', id];
  const unused = ['bore', 'primaryStroke', 'secondaryStroke', 'primaryFeeds'] as const;
  refuseUnused(filler, { stated, keys: unused, path, why: 'two cylinders with a balance bar' });
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
  const found = masterCylinderClasses.tandem;
  const fallbacks = {
    bore: 'needed',
    stroke: () => sumOfStrokes(stated) ?? fromClass(found.title, found.stroke),
    efficiency: () => fromClass(found.title, found.efficiency),
  } as const;
  return fillFacts(filler, { facts: { bore, stroke, efficiency }, stated, path, fallbacks });
}
