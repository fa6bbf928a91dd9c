import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyFullStop, lostInBooks } from './any-full-stop.testing.ts';
import { fullStop, fullStopWorkspace } from './full-stop.ts';

describe('the books of a full stop', () => {
  it('close within 0.01 %, worst of 1,000 of all kinds, those that last for minutes and never end among them', () => {
    const march = fullStopWorkspace();
    let worst = 0;
    let ended = 0;
    fc.assert(
      fc.property(anyFullStop, (stop) => {
        const summary = fullStop(stop, march);
        const lost = Math.abs(lostInBooks(summary));
        if (summary.cameToRest) ended += 1;
        worst = Math.max(worst, lost);
        expect(lost).toBeLessThan(1e-4);
      }),
      { numRuns: 1000, endOnFailure: true, seed: 20_261_125 },
    );
    console.info(
      `energy closure, worst of 1,000 stops (${ended} of them to rest): ${(100 * worst).toFixed(5)} %`,
    );
    expect(ended).toBeGreaterThan(800);
  });
});
