import { parkingLimits } from '@standstill/braking';
import { parkingBrakeFacts } from '../facts/parking-brake-facts.ts';
import type { ParkingBrakePart } from '../job.ts';
import { fillFacts } from './fill-facts.ts';
import { practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';
import { refuseUnused } from './refuse-unused.ts';

type Stated = PartOf<'parking-brake'>;

/** A parking brake with every fact known. */
export function resolveParkingBrake(filler: Filler, id: string, stated: Stated): ParkingBrakePart {
  const path = ['parts', id];
  const operatedBy = stated.operatedBy ?? 'hand';
  if (stated.operatedBy === undefined)
    filler.assumedWord([...path, 'operatedBy'], 'Pulled by', 'hand', 'not stated; the weaker of the two');
  const about = { kind: 'parking-brake', id, title: stated.title, className: null, operatedBy } as const;
  const { force, leverRatio, cableEfficiency, shoeLeverRatio, clampRatio, drumDiameter, brakeFactor } =
    parkingBrakeFacts;
  const pull = { force, leverRatio, cableEfficiency };
  const pulled = {
    force: () => forceOf(operatedBy),
    leverRatio: () => practice(operatedBy === 'hand' ? 7 : 9, 1.2, `a lever for the ${operatedBy}`),
    cableEfficiency: () => practice(0.75, 0.08, 'a cable in good order over its bends'),
  };
  const input = { stated, path };
  if (stated.type === 'caliper') {
    const keys = ['shoeLeverRatio', 'drumDiameter', 'brakeFactor'] as const;
    refuseUnused(filler, { ...input, keys, why: 'a parking brake on the caliper' });
    const fallbacks = { ...pulled, clampRatio: () => practice(14, 4, 'lever and screw of a caliper') };
    const facts = fillFacts(filler, { ...input, facts: { ...pull, clampRatio }, fallbacks });
    return { ...about, type: 'caliper', facts };
  }
  const shoeLever = { shoeLeverRatio: () => practice(4, 0.7, 'lever at the shoe') };
  if (stated.type === 'drum') {
    const keys = ['clampRatio', 'drumDiameter', 'brakeFactor'] as const;
    refuseUnused(filler, { ...input, keys, why: 'a parking brake in the rear drums, which have their own' });
    const fallbacks = { ...pulled, ...shoeLever };
    const facts = fillFacts(filler, { ...input, facts: { ...pull, shoeLeverRatio }, fallbacks });
    return { ...about, type: 'drum', facts };
  }
  refuseUnused(filler, { ...input, keys: ['clampRatio'], why: 'a parking brake with shoes' });
  const fallbacks = {
    ...pulled,
    ...shoeLever,
    drumDiameter: () => practice(0.17, 0.012, 'a drum inside a hat'),
    brakeFactor: () => practice(3, 0.8, 'small duo-servo shoes, seldom bedded'),
  };
  const facts = fillFacts(filler, {
    ...input,
    facts: { ...pull, shoeLeverRatio, drumDiameter, brakeFactor },
    fallbacks,
  });
  return { ...about, type: 'drum-in-hat', facts };
}

function forceOf(operatedBy: 'hand' | 'foot'): Fallback {
  const value = operatedBy === 'hand' ? parkingLimits.handForce : parkingLimits.footForce;
  return { value, spread: 0, reason: `most that FMVSS 135 lets the ${operatedBy} give` };
}
