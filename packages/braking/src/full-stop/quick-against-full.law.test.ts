import { describe, expect, it } from 'vitest';
import { errorTable, sharedKinds } from './quick-error-table.testing.ts';
import { errorSizes } from './quick-error.testing.ts';

describe('the quick stop against the full stop, the first 100 of the cars of docs/quick-against-full.md', () => {
  const { byKind, all } = errorTable(100 / sharedKinds.length);

  it('is off by less than 1.5 % in the median and 4 % in 95 of 100', () => {
    const { median, high } = errorSizes(all);
    expect(all.length).toBe(100);
    expect(median).toBeLessThan(0.015);
    expect(high).toBeLessThan(0.04);
  });

  it.each(['torque-limited', 'fading'] as const)(
    'is off by less than 0.5 % where the brakes decide (%s)',
    (kind) => {
      expect(errorSizes(byKind[kind]).greatest).toBeLessThan(0.005);
    },
  );
});
