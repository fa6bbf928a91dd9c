import { caliperClasses, padClasses, pistonMaterials, rotorMaterials } from '@standstill/braking';
import type { CaliperClass, PadClass, PistonMaterialId, RotorMaterial } from '@standstill/braking';
import { caliperFacts, caliperHeatFacts, pistonFact } from '../facts/caliper-facts.ts';
import { padFacts, padFrictionFact, padHeatFacts, padTemperatureFact } from '../facts/pad-facts.ts';
import { rotorFacts, rotorHeatFacts } from '../facts/rotor-facts.ts';
import type { CaliperPart, KnownTable, PadPart, RotorPart } from '../job.ts';
import type { Known } from '../known.ts';
import { classOf } from './class-of.ts';
import { fillFacts } from './fill-facts.ts';
import { fromClass, practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';
import { classTable, statedConstant, statedTable } from './resolve-table.ts';

export function resolveCaliper(filler: Filler, id: string, part: PartOf<'caliper'>): CaliperPart {
  const path = ['parts', id];
  const found: CaliperClass = caliperClasses[part.type];
  const pistons = part.pistons.map((input, index) =>
    filler.stated(pistonFact, input, [...path, 'pistons', index]),
  );
  const area = pistons.reduce((sum, piston) => sum + (Math.PI / 4) * piston.value ** 2, 0);
  const { value, spread } = found.volumeCompliancePerArea;
  const pistonMaterial = pistonMaterialOf(filler, path, part.pistonMaterial);
  const piston = pistonMaterials[pistonMaterial];
  const facts = fillFacts(filler, {
    facts: caliperFacts,
    stated: part,
    path,
    fallbacks: {
      pushOutPressure: () => fromClass(found.title, found.pushOutPressure),
      efficiency: () => fromClass(found.title, found.efficiency),
      volumeCompliance: () =>
        fromClass(found.title, {
          ...found.volumeCompliancePerArea,
          value: value * area,
          spread: spread * area,
        }),
      runningClearance: () => fromClass(found.title, found.runningClearance),
      mass: () =>
        practice(1500 * area + 0.5, 0.25 * (1500 * area + 0.5), 'grows with the area of the pistons'),
    },
  });
  const heat = fillFacts(filler, {
    facts: caliperHeatFacts,
    stated: part,
    path,
    fallbacks: {
      pistonConductance: () => fromClass(piston.title, piston.conductance),
      boreConductance: () => fromClass(found.title, found.boreConductance),
      bodyConductance: () => fromClass(found.title, found.bodyConductance),
      bodySpecificHeat: () => fromClass(found.title, found.bodySpecificHeat),
      fluidConductance: () => fromClass(found.title, found.fluidConductance),
      fluidDepth: () => fromClass(found.title, found.fluidDepth),
    },
  });
  const about = { kind: 'caliper', id, title: part.title, className: null } as const;
  return { ...about, type: part.type, pistons, pistonMaterial, facts, heat };
}

function pistonMaterialOf(
  filler: Filler,
  path: readonly string[],
  stated: PistonMaterialId | undefined,
): PistonMaterialId {
  if (stated !== undefined) return stated;
  const because = 'not stated; most are, and phenolic ones would keep the fluid cooler';
  filler.assumedWord([...path, 'pistonMaterial'], 'Piston material', 'steel', because);
  return 'steel';
}

export function resolvePad(filler: Filler, id: string, part: PartOf<'pad'>): PadPart {
  const path = ['parts', id];
  const because = 'no class is given; pad friction decides the pedal force';
  const found = classOf<PadClass>(filler, {
    classes: padClasses,
    id: part.class,
    path,
    otherwise: 'road',
    because,
  });
  const facts = fillFacts(filler, {
    facts: padFacts,
    stated: part,
    path,
    fallbacks: {
      thickness: () => practice(0.01, 0.002, 'a pad near new'),
      compressibility: () => fromClass(found.title, found.compressibility),
      mass: (known) => massOfPad(known('area'), known('thickness'), known('density')),
      specificHeat: () => fromClass(found.title, found.specificHeat),
      conductivity: () => fromClass(found.title, found.conductivity),
      density: () => fromClass(found.title, found.density),
    },
  });
  const heat = fillFacts(filler, {
    facts: padHeatFacts,
    stated: part,
    path,
    fallbacks: {
      contactConductance: () => fromClass(found.title, found.contactConductance),
      plateConductance: () => fromClass(found.title, found.plateConductance),
    },
  });
  if (part.contact === undefined) {
    filler.assumedWord(
      [...path, 'contact'],
      'Contact',
      'uniform wear',
      'common practice: bedded pads wear evenly',
    );
  }
  const contact = part.contact ?? 'uniform-wear';
  const friction = frictionTable(filler, id, part, found);
  return {
    kind: 'pad',
    id,
    title: part.title,
    className: part.class ?? null,
    contact,
    friction,
    facts,
    heat,
  };
}

function frictionTable(filler: Filler, id: string, part: PartOf<'pad'>, found: PadClass): KnownTable {
  const table = { path: ['parts', id, 'friction'], at: padTemperatureFact, value: padFrictionFact };
  if (part.friction === undefined) {
    const { title, frictionTemperatures: points, frictions: curve } = found;
    return classTable(filler, { ...table, title, points, curve });
  }
  return Array.isArray(part.friction)
    ? statedTable(filler, part.friction, table)
    : statedConstant(filler, part.friction, table);
}

/** Friction material and a steel plate of 6 mm behind it. */
function massOfPad(area: Known, thickness: Known, density: Known): Fallback {
  const value = area.value * (thickness.value * density.value + 0.006 * 7850);
  return {
    value,
    spread: 0.15 * value,
    reason: 'from its size, with a steel plate of 6 mm, common practice',
  };
}

export function resolveRotor(filler: Filler, id: string, part: PartOf<'rotor'>): RotorPart {
  const path = ['parts', id];
  const because = 'no class is given; nearly all road rotors are grey iron';
  const found = classOf<RotorMaterial>(filler, {
    classes: rotorMaterials,
    id: part.class,
    path,
    otherwise: 'greyIron',
    because,
  });
  const vented = part.type === 'vented';
  const facts = fillFacts(filler, {
    facts: rotorFacts,
    stated: part,
    path,
    fallbacks: {
      cheekThickness: (known) => cheekOf(known('thickness'), vented),
      sweptOuterDiameter: (known) =>
        practice(known('outerDiameter').value - 0.002, 0.001, 'the pads stop 1 mm inside the edge'),
      ringMass: (known) => ringMassOf(known, vented),
      mass: (known) => massWithHat(known('ringMass')),
      density: () => fromClass(found.title, found.density),
      specificHeat: () => fromClass(found.title, found.specificHeat),
      specificHeatSlope: () => fromClass(found.title, found.specificHeatSlope),
      conductivity: () => fromClass(found.title, found.conductivity),
      emissivity: () => fromClass(found.title, found.emissivity),
    },
  });
  const heat = fillFacts(filler, {
    facts: rotorHeatFacts,
    stated: part,
    path,
    fallbacks: {
      hatThickness: () => practice(0.006, 0.0015, 'an iron hat of 5 to 8 mm'),
      hatLength: () => practice(0.035, 0.012, 'half the depth of the hat and some of its face'),
      hubMass: () => practice(3, 1, 'hub flange and bearing; some of the knuckle'),
      hubConductance: () => practice(1500, 800, 'a clamped joint with some rust'),
    },
  });
  return {
    kind: 'rotor',
    id,
    title: part.title,
    className: part.class ?? null,
    type: part.type,
    facts,
    heat,
  };
}

function cheekOf(thickness: Known, vented: boolean): Fallback {
  if (!vented)
    return { value: thickness.value / 2, spread: 0, reason: 'half of the thickness of a solid rotor' };
  return practice(
    0.31 * thickness.value,
    0.02 * thickness.value,
    'a vented rotor has about 31 % of its thickness in each cheek',
  );
}

/** The ring from its size: inner radius 68 % of the outer one, a quarter of the vent filled by vanes. */
function ringMassOf(known: (key: keyof typeof rotorFacts) => Known, vented: boolean): Fallback {
  const outer = known('sweptOuterDiameter').value / 2;
  const cheeks = 2 * known('cheekThickness').value;
  const vent = vented ? 0.25 * Math.max(known('thickness').value - cheeks, 0) : 0;
  const value = Math.PI * outer ** 2 * (1 - 0.68 ** 2) * (cheeks + vent) * known('density').value;
  const reason =
    'from its size: ring from 68 % of the radius out, vanes fill a quarter of the vent, common practice';
  return { value, spread: 0.1 * value, reason };
}

function massWithHat(ring: Known): Fallback {
  const value = 1.38 * ring.value;
  return { value, spread: 0.08 * value, reason: 'ring and an iron hat of 38 % of it, common practice' };
}
