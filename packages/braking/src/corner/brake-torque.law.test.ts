import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyAxleBrake } from '../set-up/any-set-up.testing.ts';
import { brakeTorque } from './brake-torque.ts';
import { effectiveRadius } from './effective-radius.ts';

const anyPressure = fc.double({ min: 0, max: 20e6, noNaN: true });
const anyFriction = fc.double({ min: 0, max: 0.8, noNaN: true });

describe('brake torque', () => {
  it('is the same for a floating and a fixed caliper with equal piston area on one side', () => {
    fc.assert(
      fc.property(anyAxleBrake, anyPressure, anyFriction, (brake, pressure, friction) => {
        const of = (kind: 'floating' | 'fixed') =>
          brakeTorque({ brake: { ...brake, caliper: { ...brake.caliper, kind } }, pressure, friction });
        expect(of('floating')).toBe(of('fixed'));
      }),
      { numRuns: 500 },
    );
  });

  it('depends on the pistons of one side through their area alone', () => {
    fc.assert(
      fc.property(anyAxleBrake, anyPressure, anyFriction, (brake, pressure, friction) => {
        const squares = brake.caliper.pistonDiameters.reduce((sum, diameter) => sum + diameter ** 2, 0);
        const onePiston = { ...brake.caliper, pistonDiameters: [Math.sqrt(squares)] };
        const torque = brakeTorque({ brake, pressure, friction });
        expect(brakeTorque({ brake: { ...brake, caliper: onePiston }, pressure, friction })).toBeCloseTo(
          torque,
          6,
        );
      }),
      { numRuns: 500 },
    );
  });

  it('is nothing below push-out and a straight line above it', () => {
    fc.assert(
      fc.property(anyAxleBrake, anyPressure, anyFriction, (brake, over, friction) => {
        const pushOut = brake.caliper.pushOutPressure;
        const at = (pressure: number) => brakeTorque({ brake, pressure, friction });
        expect(at(pushOut)).toBe(0);
        expect(at(pushOut / 2)).toBe(0);
        expect(at(pushOut + 2 * over)).toBeCloseTo(2 * at(pushOut + over), 4);
      }),
      { numRuns: 500 },
    );
  });

  it('has the larger arm under uniform pressure, and both inside the swept band', () => {
    fc.assert(
      fc.property(anyAxleBrake, ({ rotor, pad }) => {
        const wear = effectiveRadius({ rotor, pad, assumption: 'uniform-wear' });
        const pressure = effectiveRadius({ rotor, pad, assumption: 'uniform-pressure' });
        expect(pressure).toBeGreaterThanOrEqual(wear);
        expect(pressure).toBeLessThan(rotor.sweptOuterRadius);
        expect(wear).toBeGreaterThan(rotor.sweptOuterRadius - pad.radialHeight);
      }),
      { numRuns: 500 },
    );
  });
});
