import { describe, expect, it } from 'vitest';
import { documentDifferences, shownValue } from './document-differences.ts';

const base = { title: 'A', car: { mass: '2600 lb', wheelbase: { value: '96 in', origin: 'measured' } } };

describe('documentDifferences', () => {
  it('tells who changed what since both began', () => {
    const mine = { ...base, car: { ...base.car, mass: '2650 lb' } };
    const theirs = { ...base, title: 'B' };
    expect(documentDifferences(mine, theirs, base)).toEqual([
      { path: 'title', mine: 'A', theirs: 'B', changedBy: 'them' },
      { path: 'car.mass', mine: '2650 lb', theirs: '2600 lb', changedBy: 'me' },
    ]);
  });

  it('a value that both changed belongs to neither', () => {
    const mine = { ...base, title: 'B' };
    const theirs = { ...base, title: 'C' };
    expect(documentDifferences(mine, theirs, base)[0]?.changedBy).toBeNull();
  });

  it('takes a quantity as one value, and sees what only one side has', () => {
    const mine = { car: { wheelbase: { value: '97 in', origin: 'measured' }, grade: 1 } };
    const theirs = { car: { wheelbase: { value: '96 in', origin: 'measured' } } };
    expect(documentDifferences(mine, theirs, theirs).map(({ path }) => path)).toEqual([
      'car.wheelbase',
      'car.grade',
    ]);
  });

  it('equal documents differ nowhere', () => {
    expect(documentDifferences(base, structuredClone(base), null)).toEqual([]);
  });
});

describe('shownValue', () => {
  it('reads like the field', () => {
    expect(shownValue({ value: '96 in', origin: 'measured', spread: '0.1 in' })).toBe(
      '96 in ± 0.1 in, measured',
    );
    expect(shownValue({ value: 96, unit: 'in' })).toBe('96 in');
    expect(shownValue(undefined)).toBe('left out');
    expect(shownValue(['1 in', '2 in'])).toBe('1 in, 2 in');
  });
});
