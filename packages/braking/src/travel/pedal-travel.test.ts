import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { compressedAir } from './compressed-air.ts';
import { hoseVolume } from './hose-volume.ts';
import { pedalTravel } from './pedal-travel.ts';
import { strokeReserve } from './stroke-reserve.ts';
import { travelPerVolume } from './travel-per-volume.ts';
import { tubeVolume } from './tube-volume.ts';

describe('pedalTravel', () => {
  it('is nothing without a foot and has free play at the first touch', () => {
    expect(pedalTravel({ setUp: exampleSetUp, pedalForce: 0 }).travel).toBe(0);
    expect(pedalTravel({ setUp: exampleSetUp, pedalForce: 1e-6 }).parts.freePlay).toBe(0.006);
  });

  it('shows a pedal full of air as bottomed, with the travel that it would ask for', () => {
    const airy: SetUp = { ...exampleSetUp, fluid: { ...exampleSetUp.fluid, trappedAir: 2e-5 } };
    const { bottomed, share, strokeReserve: reserve } = pedalTravel({ setUp: airy, pedalForce: 300 });
    expect(bottomed).toBe(true);
    expect(share).toBeGreaterThan(1);
    expect(reserve).toBeLessThan(0);
    expect(pedalTravel({ setUp: exampleSetUp, pedalForce: 300 }).bottomed).toBe(false);
  });

  it('weighs the cylinders of a balance bar by the share of the bar', () => {
    const bar = {
      kind: 'balance-bar',
      frontBore: 0.02,
      rearBore: 0.02,
      frontForceShare: 0.75,
      stroke: 0.03,
      efficiency: 1,
    } as const;
    const { front, rear } = travelPerVolume(bar);
    expect(front / rear).toBeCloseTo(3, 12);
    // The front cylinder alone runs out of stroke first.
    const reserve = strokeReserve({ masterCylinder: bar, frontVolume: 8e-6, rearVolume: 1e-6 });
    expect(reserve).toBeCloseTo(0.03 - 8e-6 / (Math.PI * 1e-4), 12);
  });

  it('marks a hose past its stated pressures and carries the last slope on', () => {
    const hose = { length: 1, pressures: [1e6, 2e6], expansions: [1e-6, 1.5e-6] };
    expect(hoseVolume(hose, 2e6)).toEqual({ volume: 1.5e-6, beyondTable: false });
    expect(hoseVolume(hose, 4e6).volume).toBeCloseTo(2.5e-6, 15);
    expect(hoseVolume(hose, 4e6).beyondTable).toBe(true);
    expect(hoseVolume(hose, 0.5e6).volume).toBeCloseTo(0.5e-6, 15);
    const strong = { ...exampleSetUp, pedal: { ...exampleSetUp.pedal, ratio: 8 } };
    expect(pedalTravel({ setUp: strong, pedalForce: 900 }).hoseBeyondTable).toBe(true);
  });

  it('squeezes nearly all trapped air at working pressure, and a fast push less of it', () => {
    expect(compressedAir({ volume: 1e-6, pressure: 10e6 })).toBeCloseTo(
      1e-6 * (1 - 101_325 / 10_101_325),
      15,
    );
    expect(compressedAir({ volume: 1e-6, pressure: 1e5, exponent: 1.4 })).toBeLessThan(
      compressedAir({ volume: 1e-6, pressure: 1e5 }),
    );
  });

  it('grows a thin tube as the thin-walled formula says', () => {
    // Thin wall, closed ends: ΔV/V = (p r / E t)(5/2 − 2ν), ν = 0.3.
    const tube = { length: 1, innerDiameter: 0.02, wallThickness: 0.0001, elasticModulus: 200e9 };
    const relative = tubeVolume(tube, 1e5) / (Math.PI * 0.01 ** 2);
    const thin = ((1e5 * 0.01005) / (200e9 * 0.0001)) * (2.5 - 0.6);
    expect(relative / thin).toBeCloseTo(1, 2);
  });

  it.each([
    ['stated pressure of the hose', { pressures: [2e6, 1e6], expansions: [1e-6, 2e-6] }],
    ['stated expansion of the hose', { pressures: [1e6, 2e6], expansions: [2e-6, 1e-6] }],
    ['stated expansions of the hose', { pressures: [1e6, 2e6], expansions: [2e-6] }],
    ['stated pressures of the hose', { pressures: [], expansions: [] }],
  ])('refuses a hose table with a wrong %s', (quantity, table) => {
    expect(() => hoseVolume({ length: 0.4, ...table }, 1e6)).toThrow(quantity);
  });
});
