import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import { rotorHeatShare } from './rotor-heat-share.ts';

const { rotor, pad } = exampleSetUp.frontBrake;

describe('the share of heat that the rotor takes', () => {
  it('is one half for equal bodies with equal areas', () => {
    const twin = {
      ...pad,
      conductivity: rotor.conductivity,
      density: rotor.density,
      specificHeat: rotor.specificHeat,
    };
    const area = Math.PI * (0.138 ** 2 - (0.138 - pad.radialHeight) ** 2);
    expect(rotorHeatShare({ rotor, pad: { ...twin, area } })).toBeCloseTo(0.5, 9);
  });

  it('falls where the pad takes up heat more readily', () => {
    const metallic = { ...pad, conductivity: 12, density: 3500 };
    expect(rotorHeatShare({ rotor, pad: metallic })).toBeLessThan(rotorHeatShare({ rotor, pad }));
  });
});
