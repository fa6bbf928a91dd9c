import fc from 'fast-check';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import type { RotorWithPad } from './swept-area.ts';

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

/** A solid rotor of known thickness whose ring mass is that of its geometry. */
export function solidRotor(halfThickness: number, specificHeatSlope = 0): RotorWithPad {
  const { frontBrake } = exampleSetUp;
  const pad = { ...frontBrake.pad, radialHeight: 0.05 };
  const sweptOuterRadius = 0.147;
  const area = Math.PI * 0.05 * (2 * sweptOuterRadius - 0.05);
  return {
    pad,
    rotor: {
      ...frontBrake.rotor,
      kind: 'solid',
      outerDiameter: 0.3,
      sweptOuterRadius,
      thickness: 2 * halfThickness,
      cheekThickness: halfThickness,
      ringMass: 2 * halfThickness * area * 7200,
      density: 7200,
      specificHeat: 460,
      specificHeatSlope,
      conductivity: 50,
      emissivity: 0,
    },
  };
}

/** Rotors and pads over a wide range, solid and vented, ring mass at odds with geometry or not. */
export const anyRotor: fc.Arbitrary<RotorWithPad> = fc
  .record({
    kind: fc.constantFrom<'solid' | 'vented'>('solid', 'vented'),
    cheekThickness: between(0.003, 0.015),
    gap: between(0.002, 0.02),
    massFactor: between(0.7, 1.8),
    specificHeatSlope: between(0, 1),
    conductivity: between(20, 180),
    emissivity: between(0, 1),
  })
  .map(({ kind, cheekThickness, gap, massFactor, specificHeatSlope, conductivity, emissivity }) => {
    const { rotor, pad } = solidRotor(cheekThickness, specificHeatSlope);
    const thickness = 2 * cheekThickness + (kind === 'vented' ? gap : 0);
    const ringMass = massFactor * rotor.ringMass;
    return { pad, rotor: { ...rotor, kind, thickness, ringMass, conductivity, emissivity } };
  });
