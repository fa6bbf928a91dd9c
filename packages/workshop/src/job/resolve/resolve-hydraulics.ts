import { fluidClasses, hoseClasses, tubeClass } from '@standstill/braking';
import type { FluidClass, HoseClass } from '@standstill/braking';
import { antilockFacts } from '../facts/antilock-facts.ts';
import { fluidFacts } from '../facts/fluid-facts.ts';
import { hoseExpansionFact, hoseFacts, hosePressureFact } from '../facts/hose-facts.ts';
import { rearValveFacts } from '../facts/rear-valve-facts.ts';
import { tubeFacts } from '../facts/tube-facts.ts';
import type { AntilockPart, FluidPart, HosePart, RearValvePart, TubePart } from '../job.ts';
import type { DocumentPath } from '../reading/position.ts';
import { classOf } from './class-of.ts';
import { fillFacts } from './fill-facts.ts';
import { fromClass, practice } from './filler.ts';
import type { Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';
import { classTable, statedTable } from './resolve-table.ts';
import { statedFluidClass } from './stated-fluid-class.ts';

/** s. */
const year = 31_557_600;

export function resolveRearValve(filler: Filler, id: string, part: PartOf<'rear-valve'>): RearValvePart {
  const fallbacks = { kneePressure: 'needed', slope: 'needed' } as const;
  const facts = fillFacts(filler, { facts: rearValveFacts, stated: part, path: ['parts', id], fallbacks });
  return { kind: 'rear-valve', id, title: part.title, className: null, facts };
}

export function resolveAntilock(filler: Filler, id: string, part: PartOf<'antilock'>): AntilockPart {
  const path = ['parts', id];
  const facts = fillFacts(filler, {
    facts: antilockFacts,
    stated: part,
    path,
    fallbacks: {
      efficiency: () => practice(0.92, 0.03, 'mean of peak friction used while cycling on a dry road'),
      minimumSpeed: () => practice(2, 0.5, 'off at walking pace'),
    },
  });
  if (part.electronicRearLimit === undefined) {
    filler.assumedWord(
      [...path, 'electronicRearLimit'],
      'Electronic rear limit',
      'no',
      'not stated; the safer of the two',
    );
  }
  const electronicRearLimit = part.electronicRearLimit ?? false;
  return { kind: 'antilock', id, title: part.title, className: null, electronicRearLimit, facts };
}

export function resolveFluid(
  filler: Filler,
  id: string,
  part: PartOf<'fluid'>,
  path: DocumentPath = ['parts', id],
): FluidPart {
  const because = 'no class is given; read it off the cap';
  const className = statedFluidClass(filler, part, path);
  const found = classOf<FluidClass>(filler, {
    classes: fluidClasses,
    id: className,
    path,
    otherwise: 'dot4',
    because,
    suggests: false,
  });
  const facts = fillFacts(filler, {
    facts: fluidFacts,
    stated: part,
    path,
    fallbacks: {
      bulkModulus: () => fromClass(found.title, found.bulkModulus),
      volume: () => practice(2e-4, 5e-5, 'fluid between cylinder and pistons'),
      trappedAir: () => practice(5e-7, 3e-7, 'a good bleed leaves about half a cubic centimeter'),
      dryBoilingPoint: () => fromClass(found.title, found.dryBoilingPoint),
      wetBoilingPoint: () => fromClass(found.title, found.wetBoilingPoint),
      age: () => practice(2 * year, 0.8 * year, 'not stated; two years is when it should be changed'),
      waterPerYear: () => fromClass(found.title, found.waterPerYear),
    },
  });
  return { kind: 'fluid', id, title: part.title, className: className ?? null, facts };
}

export function resolveHose(
  filler: Filler,
  id: string,
  part: PartOf<'hose'>,
  path: DocumentPath = ['parts', id],
): HosePart {
  const facts = fillFacts(filler, {
    facts: hoseFacts,
    stated: part,
    path,
    fallbacks: { length: () => practice(0.38, 0.05, 'about 15 in') },
  });
  const about = { kind: 'hose', id, title: part.title, className: part.class ?? null, facts } as const;
  const table = { path: [...path, 'expansion'], at: hosePressureFact, value: hoseExpansionFact };
  if (part.expansion !== undefined)
    return { ...about, expansion: statedTable(filler, part.expansion, table) };
  const because = 'no class is given';
  const found = classOf<HoseClass>(filler, {
    classes: hoseClasses,
    id: part.class,
    path,
    otherwise: 'rubber',
    because,
  });
  return {
    ...about,
    expansion: classTable(filler, {
      ...table,
      title: found.title,
      points: found.pressures,
      curve: found.expansions,
    }),
  };
}

export function resolveTube(
  filler: Filler,
  id: string,
  part: PartOf<'tube'>,
  path: DocumentPath = ['parts', id],
): TubePart {
  const facts = fillFacts(filler, {
    facts: tubeFacts,
    stated: part,
    path,
    fallbacks: {
      length: () => fromClass(tubeClass.title, tubeClass.length),
      innerDiameter: () => fromClass(tubeClass.title, tubeClass.innerDiameter),
      wallThickness: () => fromClass(tubeClass.title, tubeClass.wallThickness),
      elasticModulus: () => fromClass(tubeClass.title, tubeClass.elasticModulus),
    },
  });
  return { kind: 'tube', id, title: part.title, className: null, facts };
}
