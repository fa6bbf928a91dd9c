import { expect, it } from 'vitest';
import { nominalTireSize } from './nominal-tire-size.ts';

it('adds two sidewalls to the rim, and refuses what is no tire', () => {
  const size = nominalTireSize({ width: 0.2, aspectRatio: 0.5, rimDiameter: 0.4 });
  expect(size).toEqual({ sidewall: 0.1, outerDiameter: 0.6000000000000001 });
  expect(() => nominalTireSize({ width: 2, aspectRatio: 0.5, rimDiameter: 0.4 })).toThrow('tire width');
  expect(() => nominalTireSize({ width: 0.2, aspectRatio: 5, rimDiameter: 0.4 })).toThrow('aspect ratio');
  expect(() => nominalTireSize({ width: 0.2, aspectRatio: 0.5, rimDiameter: 4 })).toThrow('rim diameter');
});
