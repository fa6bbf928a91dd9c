import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shapley } from './shapley.ts';

const runs = { numRuns: 500 };

/** A game: a number for every set of its players. */
const anyGame = fc.integer({ min: 1, max: 6 }).chain((players) =>
  fc.record({
    players: fc.constant(players),
    values: fc.array(fc.double({ min: -100, max: 100, noNaN: true }), {
      minLength: 2 ** players,
      maxLength: 2 ** players,
    }),
  }),
);

function swapBits(set: number, first: number, second: number): number {
  const differ = ((set >> first) ^ (set >> second)) & 1;
  return set ^ ((differ << first) | (differ << second));
}

describe('the Shapley value', () => {
  it('sums to the whole', () => {
    fc.assert(
      fc.property(anyGame, ({ players, values }) => {
        const shares = shapley(players, (set) => values[set]!);
        const sum = shares.reduce((total, share) => total + share, 0);
        expect(Math.abs(sum - (values.at(-1)! - values[0]!))).toBeLessThan(1e-10);
      }),
      runs,
    );
  });

  it('gives nothing to a player who changes nothing', () => {
    fc.assert(
      fc.property(anyGame, fc.nat(5), ({ players, values }, pick) => {
        const idle = pick % players;
        const shares = shapley(players, (set) => values[set & ~(1 << idle)]!);
        expect(shares[idle]).toBe(0);
      }),
      runs,
    );
  });

  it('gives equal players equal shares', () => {
    fc.assert(
      fc.property(anyGame, ({ players, values }) => {
        fc.pre(players > 1);
        const symmetric = (set: number) => values[set]! + values[swapBits(set, 0, 1)]!;
        const shares = shapley(players, symmetric);
        expect(Math.abs(shares[0]! - shares[1]!)).toBeLessThan(1e-10);
      }),
      runs,
    );
  });

  it('is the mean over all orders of what each player adds', () => {
    const values = [0, 3, 5, 9, 2, 7, 4, 20];
    const orders = [
      [0, 1, 2],
      [0, 2, 1],
      [1, 0, 2],
      [1, 2, 0],
      [2, 0, 1],
      [2, 1, 0],
    ];
    const mean = [0, 0, 0];
    for (const order of orders) {
      let set = 0;
      for (const player of order) {
        mean[player]! += (values[set | (1 << player)]! - values[set]!) / 6;
        set |= 1 << player;
      }
    }
    const shares = shapley(3, (set) => values[set]!);
    for (let i = 0; i < 3; i += 1) expect(shares[i]).toBeCloseTo(mean[i]!, 12);
  });

  it('has no shares for no players, and refuses too many', () => {
    expect(shapley(0, () => 5)).toHaveLength(0);
    expect(() => shapley(17, () => 0)).toThrow('players');
  });
});
