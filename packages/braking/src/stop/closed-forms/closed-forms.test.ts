import { describe, expect, it } from 'vitest';
import { constantDecelerationStop } from './constant-deceleration-stop.ts';
import { idealStop } from './ideal-stop.ts';
import { linearBuildUpStop } from './linear-build-up-stop.ts';
import { meanFullyDevelopedDeceleration } from './mean-fully-developed-deceleration.ts';
import { regulationDistance } from './regulation-distance.ts';
import { speedFromSkid } from './speed-from-skid.ts';

describe('the closed forms of a stop', () => {
  it('agree with each other where they meet', () => {
    const ideal = idealStop({ speed: 30, friction: 0.8 });
    const deceleration = 0.8 * 9.80665;
    expect(constantDecelerationStop({ speed: 30, deceleration }).distance).toBeCloseTo(ideal.distance, 9);
    expect(linearBuildUpStop({ speed: 30, buildUpTime: 0, deceleration }).distance).toBeCloseTo(
      ideal.distance,
      9,
    );
    expect(speedFromSkid({ distance: ideal.distance, friction: 0.8 })).toBeCloseTo(30, 9);
  });

  it('have the drag fade out smoothly', () => {
    const without = idealStop({ speed: 30, friction: 0.8 });
    const hardlyAny = idealStop({ speed: 30, friction: 0.8, dragOverMass: 1e-12 });
    expect(hardlyAny.distance / without.distance).toBeCloseTo(1, 9);
    expect(hardlyAny.time / without.time).toBeCloseTo(1, 6);
    expect(idealStop({ speed: 30, friction: 0.8, dragOverMass: 3e-4 }).distance).toBeLessThan(
      without.distance,
    );
  });

  it('stop shorter uphill, and refuse a grade on which the car does not slow', () => {
    const level = constantDecelerationStop({ speed: 20, deceleration: 3, reactionTime: 1.5 });
    expect(level.reactionDistance).toBe(30);
    const uphill = constantDecelerationStop({ speed: 20, deceleration: 3, grade: 0.06 });
    expect(uphill.brakingDistance).toBeLessThan(level.brakingDistance);
    expect(() => constantDecelerationStop({ speed: 20, deceleration: 0.5, grade: -0.06 })).toThrow(
      'on the grade',
    );
  });

  it('refuse gates in the wrong order and speeds outside a test', () => {
    const gates = { highSpeed: 20, lowSpeed: 2.5, distanceAtHigh: 40, distanceAtLow: 15 };
    expect(() => meanFullyDevelopedDeceleration(gates)).toThrow('between the gates');
    expect(() => regulationDistance('fmvss135-cold', 1)).toThrow('speed');
  });
});
