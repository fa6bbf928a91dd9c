import { drumClassOf, drumParts, rotorMaterials } from '@standstill/braking';
import { drumFacts, liningFrictionFact } from '../facts/drum-facts.ts';
import { padTemperatureFact } from '../facts/pad-facts.ts';
import type { DrumPart, KnownTable } from '../job.ts';
import type { Known } from '../known.ts';
import { fillFacts } from './fill-facts.ts';
import { fromClass, practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';
import { classTable, statedConstant, statedTable } from './resolve-table.ts';

/** A drum brake with every fact known. */
export function resolveDrum(filler: Filler, id: string, part: PartOf<'drum'>): DrumPart {
  const path = ['parts', id];
  const found = drumClassOf(part.type);
  const parts = 'Drum brake';
  const { value, spread } = drumParts.volumeCompliancePerArea;
  const facts = fillFacts(filler, {
    facts: drumFacts,
    stated: part,
    path,
    fallbacks: {
      brakeFactor: () => fromClass(found.title, found.brakeFactor),
      pushOutPressure: () => fromClass(parts, drumParts.pushOutPressure),
      efficiency: () => fromClass(parts, drumParts.efficiency),
      volumeCompliance: (known) => {
        const area = (Math.PI / 4) * known('cylinderBore').value ** 2;
        const scaled = { ...drumParts.volumeCompliancePerArea, value: value * area, spread: spread * area };
        return fromClass(parts, scaled);
      },
      shoeClearance: () => fromClass(parts, drumParts.shoeClearance),
      wallThickness: () => practice(0.008, 0.0015, 'cast drum of a passenger car'),
      mass: (known) => massOfDrum(known),
      liningArea: (known) => liningOf(known('diameter'), known('width')),
      liningThickness: () => practice(0.0045, 0.001, 'lining near new'),
      compressibility: () => fromClass(parts, drumParts.compressibility),
    },
  });
  const because = 'not asked for; nearly all drums are';
  filler.assumedWord([...path, 'material'], 'Material of the drum', rotorMaterials.greyIron.title, because);
  const friction = frictionTable(filler, id, part);
  return { kind: 'drum', id, title: part.title, className: null, type: part.type, friction, facts };
}

function frictionTable(filler: Filler, id: string, part: PartOf<'drum'>): KnownTable {
  const table = { path: ['parts', id, 'friction'], at: padTemperatureFact, value: liningFrictionFact };
  if (part.friction === undefined) {
    const { frictionTemperatures: points, frictions: curve } = drumParts;
    return classTable(filler, { ...table, title: 'Drum lining', points, curve });
  }
  return Array.isArray(part.friction)
    ? statedTable(filler, part.friction, table)
    : statedConstant(filler, part.friction, table);
}

/** 110° of the drum under each lining. */
function liningOf(diameter: Known, width: Known): Fallback {
  const area = ((110 * Math.PI) / 180) * (diameter.value / 2) * width.value;
  return practice(area, 0.08 * area, 'lining over 110° of the drum');
}

/** Wall with a rim and a back as thick as a closed disc of it. */
function massOfDrum(known: (key: 'diameter' | 'width' | 'wallThickness') => Known): Fallback {
  const [radius, width, wall] = [
    known('diameter').value / 2,
    known('width').value,
    known('wallThickness').value,
  ];
  const { density } = rotorMaterials.greyIron;
  const mass = density.value * wall * (2 * Math.PI * radius * 1.25 * width + 0.75 * Math.PI * radius ** 2);
  return { value: mass, spread: 0.15 * mass, reason: 'from its size, wall and back, common practice' };
}
