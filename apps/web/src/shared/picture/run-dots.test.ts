import { describe, expect, it } from 'vitest';
import { stack } from './run-dots.tsx';

describe('stack', () => {
  it('leaves dots that do not touch on the line', () => {
    expect(stack([0, 20, 40], 10).map((place) => place.level)).toEqual([0, 0, 0]);
  });

  it('lifts a dot that would cover another, and uses a free level again', () => {
    expect(stack([0, 4, 8, 100], 10).map((place) => place.level)).toEqual([0, 1, 2, 0]);
    expect(stack([0, 4, 12], 10).map((place) => place.level)).toEqual([0, 1, 0]);
  });

  it('keeps the order of the runs', () => {
    expect(stack([30, 10, 20], 5).map((place) => place.at)).toEqual([30, 10, 20]);
  });
});
