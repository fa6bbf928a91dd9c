import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { anyUsualStop } from '../stop/any-stop.testing.ts';
import { quickStop } from '../stop/quick-stop.ts';
import { stopEffects } from '../stop/stop-effect.ts';
import { stopBudget } from './stop-budget.ts';

function shareOf(budget: ReturnType<typeof stopBudget>, effect: string): number {
  return budget.shares.find((share) => share.effect === effect)!.distance;
}

describe('the budget of a stop', () => {
  it('adds up exactly: shares are the stop less its ideal', () => {
    fc.assert(
      fc.property(anyUsualStop, (stop) => {
        const budget = stopBudget(stop);
        const sum = budget.shares.reduce((total, { distance }) => total + distance, 0);
        expect(Math.abs(sum - (budget.distance - budget.idealDistance))).toBeLessThan(1e-9 * budget.distance);
        expect(budget.distance).toBe(quickStop(stop).distance);
        expect(budget.idealDistance).toBe(quickStop({ ...stop, effectsOff: stopEffects }).distance);
      }),
      { numRuns: 500 },
    );
  });

  it('gives nothing to effects that are not there', () => {
    const { frontBrake, rearBrake } = exampleSetUp;
    const tire = { ...exampleSetUp.frontTire, loadSensitivity: 0 };
    const flat = (brake: typeof frontBrake) => {
      const pad = { ...brake.pad, frictionTemperatures: [20], frictions: [0.4] };
      return { ...brake, pad };
    };
    fc.assert(
      fc.property(anyUsualStop, (stop) => {
        const setUp = {
          ...exampleSetUp,
          antilock: { kind: 'threshold' as const, efficiency: 1, minimumSpeed: 0, electronicRearLimit: true },
          frontTire: tire,
          rearTire: tire,
          frontBrake: flat(frontBrake),
          rearBrake: flat(rearBrake),
        };
        const foot = { force: stop.foot.force, rampTime: 0 };
        const budget = stopBudget({ ...stop, setUp, foot, pressureLag: 0, lockedWheels: false });
        for (const effect of ['build-up', 'lock control', 'load sensitivity', 'heat']) {
          expect(Math.abs(shareOf(budget, effect))).toBeLessThan(1e-9 * budget.distance);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('puts a light foot down to torque, a slow one to build-up', () => {
    const stop = { setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 };
    const usual = stopBudget(stop);
    const light = stopBudget({ ...stop, foot: { force: 90, rampTime: 0.2 } });
    const slow = stopBudget({ ...stop, foot: { force: 300, rampTime: 0.8 } });
    expect(shareOf(light, 'torque')).toBeGreaterThan(shareOf(usual, 'torque') + 20);
    expect(shareOf(slow, 'build-up')).toBeGreaterThan(shareOf(usual, 'build-up') + 4);
    expect(light.idealDistance).toBeCloseTo(usual.idealDistance, 3);
  });

  it('puts hot pads under a light foot down to heat', () => {
    const foot = { force: 90, rampTime: 0.2 };
    const stop = { setUp: exampleSetUp, road: exampleRoad, foot, speed: 40 };
    const hot = stopBudget({ ...stop, rotorTemperatures: { front: 450, rear: 400 } });
    expect(shareOf(hot, 'heat')).toBeGreaterThan(shareOf(stopBudget(stop), 'heat') + 5);
  });

  it('refuses a foot that does not press and a car that does not come to rest', () => {
    const stop = { setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 };
    expect(() => stopBudget({ ...stop, foot: { force: 0, rampTime: 0.2 } })).toThrow('pedal force');
    const downhill = { ...stop, foot: { force: 5, rampTime: 0.2 }, road: { ...exampleRoad, grade: -0.25 } };
    expect(() => stopBudget(downhill)).toThrow('stopping distance');
  });
});
