import { expect, test } from 'vitest';
import { GrowingColumn } from './growing-column.ts';

test.each([0, 1, 63, 64, 65, 191, 192, 193, 16_320, 40_000])('%d values come back in order', (count) => {
  const column = new GrowingColumn();
  for (let round = 0; round < 2; round += 1) {
    expect(column.last()).toBeNaN();
    for (let i = 0; i < count; i += 1) column.push(i + round);
    expect(column.length).toBe(count);
    if (count > 0) expect(column.last()).toBe(count - 1 + round);
    const values = column.finish();
    expect(values).toHaveLength(count);
    expect(values.findIndex((value, i) => value !== i + round)).toBe(-1);
    expect(column).toHaveLength(0);
  }
});
