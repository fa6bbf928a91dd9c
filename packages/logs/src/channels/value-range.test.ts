import { expect, it } from 'vitest';
import { valueRange } from './value-range.ts';

it('leaves gaps out, and is none where there is nothing else', () => {
  expect(valueRange(Float64Array.of(NaN, -2, 7, NaN, 0))).toEqual({ low: -2, high: 7, samples: 3 });
  expect(valueRange(Float64Array.of(NaN, NaN))).toBeNull();
  expect(valueRange(new Float64Array(0))).toBeNull();
});
