import { describe, expect, it } from 'vitest';
import { caliperClasses } from './caliper-classes.ts';
import type { ClassCurve, ClassValue } from './class-value.ts';
import { fluidClasses } from './fluid-classes.ts';
import { hoseClasses } from './hose-classes.ts';
import { padClasses } from './pad-classes.ts';
import { pistonMaterials } from './piston-materials.ts';
import { rotorMaterials } from './rotor-materials.ts';
import { surfaceClasses } from './surface-classes.ts';
import { tireClasses } from './tire-classes.ts';

const libraries = {
  hoseClasses,
  fluidClasses,
  rotorMaterials,
  tireClasses,
  padClasses,
  surfaceClasses,
  caliperClasses,
  pistonMaterials,
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
    const { dry, worn, damp, wet } = surfaceClasses;
    const factors = [dry, worn, damp, wet].map(({ factor }) => factor.value);
    expect([...factors].sort((a, b) => b - a)).toEqual(factors);
    expect(tireClasses.road.peakFriction.value).toBeLessThan(tireClasses.sportyRoad.peakFriction.value);
    expect(tireClasses.sportyRoad.peakFriction.value).toBeLessThan(tireClasses.semiSlick.peakFriction.value);
  });
});
