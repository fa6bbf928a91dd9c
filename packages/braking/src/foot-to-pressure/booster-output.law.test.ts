import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyBooster } from '../set-up/any-set-up.testing.ts';
import { boosterAssist } from './booster-assist.ts';
import { boosterInput } from './booster-input.ts';
import { boosterOutput } from './booster-output.ts';

const anyRodForce = fc.double({ min: 1e-3, max: 10_000, noNaN: true });

describe('booster', () => {
  it('gives more for more, never less than the foot and at least one for one', () => {
    fc.assert(
      fc.property(anyBooster, anyRodForce, anyRodForce, (booster, rodForce, more) => {
        const less = boosterOutput({ booster, rodForce }).force;
        expect(less).toBeGreaterThanOrEqual(rodForce);
        const rise = boosterOutput({ booster, rodForce: rodForce + more }).force - less;
        expect(rise).toBeGreaterThanOrEqual(more * (1 - 1e-9) - 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  it('is continuous at the knee and one for one after it', () => {
    fc.assert(
      fc.property(anyBooster, anyRodForce, (booster, more) => {
        const { start, slope, limit } = boosterAssist(booster);
        fc.pre(slope > 1e-3 && limit > start + 1);
        const knee = (limit - start) / slope;
        fc.pre(knee < 50_000);
        const output = (rodForce: number) => boosterOutput({ booster, rodForce });
        const step = 1e-6 * knee;
        expect(output(knee - step).runOut).toBe(false);
        expect(output(knee + step).runOut).toBe(true);
        const jump = output(knee + step).force - output(knee - step).force;
        expect(jump).toBeLessThanOrEqual(2 * step * (1 + slope) * (1 + 1e-6));
        const rise = output(knee + step + more).force - output(knee + step).force;
        expect(rise).toBeCloseTo(more, 6);
      }),
      { numRuns: 1000 },
    );
  });

  it('is undone by its inverse', () => {
    fc.assert(
      fc.property(anyBooster, anyRodForce, (booster, rodForce) => {
        const outputForce = boosterOutput({ booster, rodForce }).force;
        expect(boosterInput({ booster, outputForce })).toBeCloseTo(rodForce, 6);
      }),
      { numRuns: 1000 },
    );
  });
});
