import { boosterFacts } from '../facts/booster-facts.ts';
import { masterCylinderFacts } from '../facts/master-cylinder-facts.ts';
import { pedalFacts } from '../facts/pedal-facts.ts';
import type { BoosterPart, MasterCylinderPart, PedalPart } from '../job.ts';
import { fillFacts } from './fill-facts.ts';
import { practice } from './filler.ts';
import type { Filler } from './filler.ts';
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
    ? { ...about, type: 'vacuum', facts: vacuumFacts(filler, part) }
    : { ...about, type: 'hydraulic', facts: hydraulicFacts(filler, part) };

  function vacuumFacts(into: Filler, stated: PartOf<'booster'>) {
    const { greatestAssist: _unused, ...facts } = boosterFacts;
    refuseUnused(into, { stated, keys: ['greatestAssist'], path: ['parts', id], why: 'a vacuum booster' });
    return fillFacts(into, {
      facts,
      stated,
      path: ['parts', id],
      fallbacks: {
        gain: () => practice(4.5, 0.8, 'vacuum boosters run from 3 to 7'),
        jumpInForce: () => practice(200, 80, 'output as soon as the valve opens'),
        diaphragmDiameter: 'needed',
        vacuum: () => practice(67_000, 4000, 'about 20 inHg at sea level, engine idling and warm'),
        efficiency: () => practice(0.95, 0.02, 'diaphragm force that reaches the rod'),
      },
    });
  }

  function hydraulicFacts(into: Filler, stated: PartOf<'booster'>) {
    const { gain, greatestAssist } = boosterFacts;
    const keys = ['jumpInForce', 'diaphragmDiameter', 'vacuum', 'efficiency'] as const;
    refuseUnused(into, { stated, keys, path: ['parts', id], why: 'a hydraulic booster' });
    const fallbacks = {
      gain: () => practice(5, 1, 'hydraulic boosters run from 4 to 8'),
      greatestAssist: 'needed',
    } as const;
    return fillFacts(into, { facts: { gain, greatestAssist }, stated, path: ['parts', id], fallbacks });
  }
}

export function resolveMasterCylinder(
  filler: Filler,
  id: string,
  part: PartOf<'master-cylinder'>,
): MasterCylinderPart {
  const about = { kind: 'master-cylinder', id, title: part.title, className: null } as const;
  const path = ['parts', id];
  const stroke = () => practice(0.034, 0.003, 'both pistons together');
  const efficiency = () => practice(0.95, 0.02, 'seals in good order');
  if (part.type === 'balance-bar') {
    refuseUnused(filler, { stated: part, keys: ['bore'], path, why: 'two cylinders with a balance bar' });
    const { bore: _unused, ...facts } = masterCylinderFacts;
    const frontForceShare = () => practice(0.5, 0.01, 'bar set in the middle');
    const fallbacks = {
      frontBore: 'needed',
      rearBore: 'needed',
      frontForceShare,
      stroke,
      efficiency,
    } as const;
    return {
      ...about,
      type: 'balance-bar',
      facts: fillFacts(filler, { facts, stated: part, path, fallbacks }),
    };
  }
  const keys = ['frontBore', 'rearBore', 'frontForceShare'] as const;
  refuseUnused(filler, { stated: part, keys, path, why: 'a tandem cylinder' });
  const { bore, stroke: strokeFact, efficiency: efficiencyFact } = masterCylinderFacts;
  const facts = { bore, stroke: strokeFact, efficiency: efficiencyFact };
  const fallbacks = { bore: 'needed', stroke, efficiency } as const;
  return { ...about, type: 'tandem', facts: fillFacts(filler, { facts, stated: part, path, fallbacks }) };
}
