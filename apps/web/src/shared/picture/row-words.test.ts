import { describe, expect, it } from 'vitest';
import { rowWords } from './row-words.ts';

const row = (distances: readonly number[], beyondFrom = Infinity) =>
  distances.map((distance_m, index) => ({
    stop: index + 1,
    distance_m,
    frontRotorStart_C: 80,
    fluidPeak_C: 90,
    frontRotorPeak_C: 200,
    rearRotorPeak_C: 150,
    beyondModel: index + 1 >= beyondFrom,
  }));
const text = (meters: number) => `${meters} m`;

describe('rowWords', () => {
  it('says first, best and worst, and which stop each is', () => {
    expect(rowWords(row([48, 45, 44, 47, 50]), text)).toBe(
      'first 48 m (stop 1), best 44 m (stop 3), worst 50 m (stop 5).',
    );
  });

  it('names a stop once that is first and worst, or first and best', () => {
    expect(rowWords(row([50, 45, 46]), text)).toBe('first and worst 50 m (stop 1), best 45 m (stop 2).');
    expect(rowWords(row([44, 45]), text)).toBe('first and best 44 m (stop 1), worst 45 m (stop 2).');
  });

  it('says where the figures are a guess, and where the car does not stop at all', () => {
    expect(rowWords(row([48, 60], 2), text)).toMatch(/From stop 2 on that is a guess/);
    expect(rowWords(row([48, Infinity]), text)).toMatch(
      /first 48 m \(stop 1\)\. From stop 2 on the car does not come to rest/,
    );
    expect(rowWords(row([Infinity]), text)).toBe('no stop in a row comes to rest.');
  });
});
