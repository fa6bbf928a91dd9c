import { describe, expect, it } from 'vitest';
import { madeRun } from './made-run.testing.ts';
import { runConfounders } from './run-confounders.ts';

const run = madeRun({ id: 'a', setUp: 'as-found', log: 'a.csv' });

describe('what runs say was different', () => {
  it('is named with both sides', () => {
    const before = [{ ...run, date: '2026-10-03', tires: 'old set' }];
    const after = [{ ...run, date: '2026-10-31', tires: 'new set', surface: 'damp' }];
    expect(runConfounders(before, after)).toEqual([
      'date: 2026-10-03 before, 2026-10-31 after',
      'tires: old set before, new set after',
      'surface: not stated before, damp after',
    ]);
  });

  it('is nothing where both sides say the same, or nothing', () => {
    expect(runConfounders([{ ...run, date: '2026-10-03' }], [{ ...run, date: '2026-10-03' }])).toEqual([]);
  });
});
