import { quantile, randomStream } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import { fullOf } from './any-full-stop.testing.ts';
import { drawStop } from './drawn-stops.testing.ts';
import { fullStopWorkspace } from './full-stop.ts';
import { meanFullStop } from './mean-full-stop.ts';

const march = fullStopWorkspace();
const stops = 8;

/** The standard deviation of one stop over its distance, 1, of 60 cars with antilock. */
function spreads(): readonly number[] {
  return Array.from({ length: 60 }, (_, car) => {
    const kind = car % 2 === 0 ? 'antilock dry' : 'antilock wet';
    const stop = fullOf(drawStop(randomStream(11, `${kind}/${car}`), kind));
    const { distance, standardError } = meanFullStop({ ...stop, stops }, march);
    return (standardError * Math.sqrt(stops)) / distance;
  });
}

describe('the mean of full stops with antilock', () => {
  it('needs few stops for a difference to be known within 0.1 %', () => {
    const all = spreads();
    // Two means of n stops each: their difference has the standard error s sqrt(2 / n).
    const needed = (spread: number): number => Math.max(1, Math.ceil(2 * (spread / 1e-3) ** 2));
    const usual = quantile(all, 0.5);
    const high = quantile(all, 0.95);
    console.info(
      `one stop with antilock: ${(100 * usual).toFixed(3)} % by chance, ${(100 * high).toFixed(3)} % in the worst twentieth; for a difference within 0.1 %: ${needed(usual)} and ${needed(high)} stops each`,
    );
    expect(usual).toBeLessThan(2e-3);
    expect(needed(high)).toBeLessThan(100);
  });
});
