import { linearTable } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import { boosterClasses } from './booster-classes.ts';
import { caliperClasses } from './caliper-classes.ts';
import type { ClassCurve, ClassValue } from './class-value.ts';
import { fluidClasses, siliconeFluid } from './fluid-classes.ts';
import { frictionCode, normalFrictionCode } from './friction-codes.ts';
import { hoseClasses } from './hose-classes.ts';
import { masterCylinderClasses } from './master-cylinder-classes.ts';
import { padClasses } from './pad-classes.ts';
import { pistonMaterials } from './piston-materials.ts';
import { pedalClass } from './pedal-class.ts';
import { rotorMaterials } from './rotor-materials.ts';
import { surfaceClasses } from './surface-classes.ts';
import { tireClasses } from './tire-classes.ts';
import { tubeClass } from './tube-class.ts';

const libraries = {
  hoseClasses,
  fluidClasses,
  rotorMaterials,
  tireClasses,
  padClasses,
  surfaceClasses,
  caliperClasses,
  pistonMaterials,
  boosterClasses,
  masterCylinderClasses,
  others: { pedalClass, tubeClass, siliconeFluid },
};

function isClassValue(field: unknown): field is ClassValue {
  return typeof field === 'object' && field !== null && 'spread' in field;
}

function isClassCurve(field: unknown): field is ClassCurve {
  return typeof field === 'object' && field !== null && 'factorSpread' in field;
}

const entries = Object.entries(libraries).flatMap(([library, classes]) =>
  Object.entries(classes).map(([id, fields]) => ({
    name: `${library}.${id}`,
    fields: Object.entries(fields),
  })),
);

describe.each(entries)('$name', ({ fields }) => {
  it('has a value, a spread smaller than it, a way of knowing and a note for every figure', () => {
    const values = fields.map(([, field]: readonly [string, unknown]) => field).filter(isClassValue);
    for (const { value, spread, known, note } of values) {
      expect(value).toBeGreaterThanOrEqual(0);
      expect(spread).toBeGreaterThanOrEqual(0);
      if (value > 0) expect(spread).toBeLessThan(value);
      else expect(spread, 'nothing, and no doubt about it').toBe(0);
      expect(['read', 'from memory', 'common practice', 'assumed']).toContain(known);
      expect(note.length).toBeGreaterThan(10);
    }
    const curves = fields.map(([, field]: readonly [string, unknown]) => field).filter(isClassCurve);
    for (const { values: points, factorSpread, note } of curves) {
      expect(Math.min(...points)).toBeGreaterThan(0);
      expect(factorSpread).toBeGreaterThanOrEqual(0);
      expect(note.length).toBeGreaterThan(10);
    }
    expect(values.length + curves.length).toBeGreaterThan(0);
  });
});

function at(id: keyof typeof hoseClasses, index: number): number {
  return hoseClasses[id].expansions.values[index] ?? Number.NaN;
}

describe('class tables', () => {
  it.each(Object.values(hoseClasses))(
    'of "$title" rise and are as long as their pressures',
    ({ pressures, expansions }) => {
      expect(expansions.values).toHaveLength(pressures.length);
      expect([...expansions.values].sort((a, b) => a - b)).toEqual(expansions.values);
      expect([...pressures].sort((a, b) => a - b)).toEqual(pressures);
    },
  );

  it.each(Object.values(padClasses))('of "$title" are as long as their temperatures', (pad) => {
    expect(pad.frictions.values).toHaveLength(pad.frictionTemperatures.length);
    expect([...pad.frictionTemperatures].sort((a, b) => a - b)).toEqual(pad.frictionTemperatures);
  });

  it('keep a measured hose under the low-expansion limit and that under the regular one', () => {
    for (const index of [0, 1, 2]) {
      expect(at('braided', index)).toBeLessThan(at('rubber', index));
      expect(at('rubber', index)).toBeLessThan(0.5 * at('rubberLowExpansionLimit', index));
      expect(at('rubberLowExpansionLimit', index)).toBeLessThan(at('rubberRegularLimit', index));
    }
  });

  it('order grip by surface and by tire', () => {
    const { dry, worn, damp, wet, gravel, packedSnow, ice } = surfaceClasses;
    const factors = [dry, worn, damp, gravel, packedSnow, ice].map(({ factor }) => factor.value);
    expect([...factors].sort((a, b) => b - a)).toEqual(factors);
    expect(wet.waterDepth.value, 'grip on water comes by its depth').toBeGreaterThan(0);
    expect(tireClasses.road.peakFriction.value).toBeLessThan(tireClasses.sportyRoad.peakFriction.value);
    expect(tireClasses.sportyRoad.peakFriction.value).toBeLessThan(tireClasses.semiSlick.peakFriction.value);
  });
});

describe('the letters on the edge of a pad', () => {
  it('fall where a friction is over the low end and not over the high one', () => {
    const frictions = [0.15, 0.1501, 0.25, 0.35, 0.3501, 0.45, 0.55, 0.5501, 1];
    expect(frictions.map(frictionCode).join('')).toBe('CDDEFFGHH');
    expect(() => frictionCode(0)).toThrow('friction');
    expect(() => frictionCode(Number.NaN)).toThrow('friction');
  });

  it('are F for every class by use, and told at the four temperatures of the test', () => {
    const asked: number[] = [];
    normalFrictionCode((temperature) => {
      asked.push(temperature);
      return 0.4;
    });
    expect(asked).toEqual([93, 121, 149, 204]);
    for (const pad of [padClasses.road, padClasses.fastRoad, padClasses.track]) {
      const frictionAt = (temperature: number) =>
        linearTable(pad.frictionTemperatures, pad.frictions.values, temperature);
      expect(normalFrictionCode(frictionAt)).toBe('F');
    }
  });
});

describe('rotor materials', () => {
  it('order the irons by how well they lead heat, and bracket what was measured on commercial rotors when cold', () => {
    const { alloyedIron, greyIron, highCarbonIron } = rotorMaterials;
    const diffusivities = [alloyedIron, greyIron, highCarbonIron].map(
      ({ conductivity, density, specificHeat }) =>
        (1e4 * conductivity.value) / (density.value * specificHeat.value),
    );
    expect([...diffusivities].sort((a, b) => a - b)).toEqual(diffusivities);
    // Hecht 1999: 0.156 to 0.200 cm²/s at room temperature; ours are for 100 to 300 °C, where less is left.
    expect(diffusivities.at(-1)).toBeGreaterThan(0.156);
    expect(diffusivities.at(-1)).toBeLessThan(0.2);
    expect(diffusivities[0]).toBeGreaterThan(0.7 * 0.156);
  });
});
