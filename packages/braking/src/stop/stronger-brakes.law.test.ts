import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import { anyStop } from './any-stop.testing.ts';
import { quickStop } from './quick-stop.ts';
import { stopEffects } from './stop-effect.ts';
import type { StopInput } from './stop-input.ts';

/** Wider pistons press harder at the same pressure. */
function withMoreTorque(stop: StopInput, factor: number): StopInput {
  const stronger = (brake: AxleBrake): AxleBrake => ({
    ...brake,
    caliper: {
      ...brake.caliper,
      pistonDiameters: brake.caliper.pistonDiameters.map((diameter) => Math.sqrt(factor) * diameter),
    },
  });
  const { setUp } = stop;
  const brakes = { frontBrake: stronger(setUp.frontBrake), rearBrake: stronger(setUp.rearBrake) };
  return { ...stop, setUp: { ...setUp, ...brakes } };
}

describe('more brake torque', () => {
  it('buys nothing in the ideal stop', () => {
    fc.assert(
      fc.property(anyStop, fc.double({ min: 1.01, max: 1.8, noNaN: true }), (stop, factor) => {
        const ideal: StopInput = { ...stop, effectsOff: stopEffects };
        const before = quickStop(ideal).distance;
        fc.pre(before < Infinity);
        expect(quickStop(withMoreTorque(ideal, factor)).distance / before).toBeCloseTo(1, 9);
      }),
      { numRuns: 500 },
    );
  });
});
