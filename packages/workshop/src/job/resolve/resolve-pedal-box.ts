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
import { practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';
import { refuseUnused } from './refuse-unused.ts';

export function resolvePedal(filler: Filler, id: string, part: PartOf<'pedal'>): PedalPart {
  const facts = fillFacts(filler, {
    facts: pedalFacts,
    stated: part,
    path: ['parts', id],
    fallbacks: {
      efficiency: () => practice(0.95, 0.02, 'pivot and clevis in good order'),
      freePlay: () => practice(0.006, 0.002, 'free play and dead stroke together'),
      flex: () => practice(2e-6, 1e-6, 'pedal box and bulkhead, about 1 mm at 500 N'),
      availableTravel: () => practice(0.13, 0.01, 'pedal to floor or to the bottom of the cylinder'),
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
  const { greatestAssist: _unused, ...facts } = boosterFacts;
  refuseUnused(filler, { stated, keys: ['greatestAssist'], path, why: 'a vacuum booster' });
  return fillFacts(filler, {
    facts,
    stated,
    path,
    fallbacks: {
      gain: () => practice(4.5, 0.8, 'vacuum boosters run from 3 to 7'),
      jumpInForce: () => practice(200, 80, 'output as soon as the valve opens'),
      diaphragmDiameter: 'needed',
      vacuum: () => practice(67_000, 4000, 'about 20 inHg at sea level, engine idling and warm'),
      efficiency: () => practice(0.95, 0.02, 'diaphragm force that reaches the rod'),
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

const hydraulicGain = (): Fallback => practice(5, 1, 'hydraulic boosters run from 4 to 8');
const stroke = (): Fallback => practice(0.034, 0.003, 'both pistons together');
const cylinderEfficiency = (): Fallback => practice(0.95, 0.02, 'seals in good order');
const frontForceShare = (): Fallback => practice(0.5, 0.01, 'bar set in the middle');

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
  const own = { frontBore: 'needed', rearBore: 'needed', frontForceShare } as const;
  const fallbacks = { ...own, stroke, efficiency: cylinderEfficiency };
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
  const { bore, stroke: strokeFact, efficiency } = masterCylinderFacts;
  const fallbacks = { bore: 'needed', stroke, efficiency: cylinderEfficiency } as const;
  return fillFacts(filler, { facts: { bore, stroke: strokeFact, efficiency }, stated, path, fallbacks });
}
