import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { repeatedStopsLumped } from './repeated-stops-lumped.ts';

describe('the lumped row of stops', () => {
  it('is the sum that it stands for: every stop adds its rise, every interval takes its share', () => {
    const anyRow = fc.record({
      risePerStop: fc.double({ min: 0.1, max: 300, noNaN: true }),
      coolingRate: fc.double({ min: 0, max: 0.1, noNaN: true }),
      interval: fc.double({ min: 0, max: 600, noNaN: true }),
      stops: fc.integer({ min: 1, max: 60 }),
    });
    fc.assert(
      fc.property(anyRow, (row) => {
        let above = 0;
        for (let i = 0; i < row.stops; i += 1) {
          above = above * Math.exp(-row.coolingRate * row.interval) + row.risePerStop;
        }
        expect(repeatedStopsLumped(row) / above).toBeCloseTo(1, 9);
      }),
      { numRuns: 500 },
    );
  });
});
