import { describe, expect, it } from 'vitest';
import { readSpeedChoices, withChoice } from './speed-choice.ts';

const choice = { name: 'v', unit: 'km/h' };

describe('speed choices', () => {
  it('come back as they were kept', () => {
    const kept = JSON.stringify(withChoice({}, 'a1', choice));
    expect(readSpeedChoices(kept)).toEqual({ a1: choice });
  });

  it('are none where they can not be read, or name no column or no unit of speed', () => {
    expect(readSpeedChoices(null)).toEqual({});
    expect(readSpeedChoices('no json')).toEqual({});
    const wrong = { a: { name: '', unit: 'mph' }, b: { name: 'v', unit: 'psi' }, c: 'v', d: choice };
    expect(readSpeedChoices(JSON.stringify(wrong))).toEqual({ d: choice });
  });

  it('are taken back one by one', () => {
    expect(withChoice({ a: choice, b: choice }, 'a', null)).toEqual({ b: choice });
  });
});
