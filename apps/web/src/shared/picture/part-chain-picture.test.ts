import { describe, expect, it } from 'vitest';
import { chain } from './part-chain-picture.tsx';

describe('chain', () => {
  const byPart = [
    { part: 'a', title: 'hoses', distance_m: -0.2 },
    { part: 'b', title: 'pads', distance_m: -3 },
    { part: 'c', title: 'valve', distance_m: 1 },
  ];

  it('ends at the start plus the sum, whatever the order', () => {
    expect(chain(40, byPart).at(-1)?.to).toBeCloseTo(37.8, 12);
  });

  it('begins with the part that buys the most, and each link begins where the last ended', () => {
    const links = chain(40, byPart);
    expect(links.map(({ title }) => title)).toEqual(['pads', 'hoses', 'valve']);
    expect(links[0]?.from).toBe(40);
    expect(links[1]?.from).toBe(links[0]?.to);
  });
});
