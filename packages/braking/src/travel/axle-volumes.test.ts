import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import { axleVolumes } from './axle-volumes.ts';
import { cornerVolumes } from './corner-volumes.ts';

const { frontBrake, fluid } = exampleSetUp;
/** One piston of 54 mm. */
const pistonArea = (Math.PI / 4) * 0.054 ** 2;

describe('cornerVolumes', () => {
  it('takes up both gaps of a corner by push-out, half of them at half of it', () => {
    expect(cornerVolumes({ brake: frontBrake, pressure: 50_000 }).clearance).toBeCloseTo(
      2 * 1e-4 * pistonArea,
      15,
    );
    expect(cornerVolumes({ brake: frontBrake, pressure: 25_000 }).clearance).toBeCloseTo(
      1e-4 * pistonArea,
      15,
    );
    expect(cornerVolumes({ brake: frontBrake, pressure: 0 }).clearance).toBe(0);
  });

  it('squeezes two pads by the clamp force over the pad face', () => {
    const facePressure = (5e6 * pistonArea * 0.95) / 0.0045;
    const { pads, caliper } = cornerVolumes({ brake: frontBrake, pressure: 5.05e6 });
    expect(pads).toBeCloseTo(2 * pistonArea * 1e-11 * facePressure, 15);
    expect(caliper).toBeCloseTo(6e-14 * 5.05e6, 15);
  });

  it('swallows the same with a floating and with a fixed caliper of the same pistons on one side', () => {
    const fixed = { ...frontBrake, caliper: { ...frontBrake.caliper, kind: 'fixed' } } as const;
    expect(cornerVolumes({ brake: fixed, pressure: 5e6 })).toEqual(
      cornerVolumes({ brake: frontBrake, pressure: 5e6 }),
    );
  });
});

describe('axleVolumes', () => {
  it('counts two corners, and half of the fluid and of the air', () => {
    const volumes = axleVolumes({ brake: frontBrake, fluid, pressure: 8e6 });
    const corner = cornerVolumes({ brake: frontBrake, pressure: 8e6 });
    expect(volumes.hoses).toBe(2 * corner.hose);
    expect(volumes.fluid).toBeCloseTo((0.5 * 1.8e-4 * 8e6) / 1.6e9, 15);
    expect(volumes.air).toBeCloseTo(0.15e-6 * (8e6 / 8_101_325), 15);
    const { clearance, caliper, pads, hoses, tubes, fluid: squeezed, air, total } = volumes;
    expect(total).toBeCloseTo(clearance + caliper + pads + hoses + tubes + squeezed + air, 15);
  });
});
