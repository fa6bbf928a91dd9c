import { describe, expect, it } from 'vitest';
import { changeOf } from './change.ts';
import { signedRange } from './signed-range.ts';
import { speaker } from './speaker.ts';
import { subjectOf } from './subject-of.ts';

const feet = 0.3048;

describe('what an interval lets one say', () => {
  it.each([
    [-5, -2, { kind: 'less', least: 2, most: 5 }],
    [2, 5, { kind: 'more', least: 2, most: 5 }],
    [-5, 0.5, { kind: 'perhaps-less', most: 5 }],
    [-0.5, 5, { kind: 'perhaps-more', most: 5 }],
    [-0.9, 0.9, { kind: 'none' }],
    [-0.9, -0.2, { kind: 'none' }],
    [-5, 5, { kind: 'open' }],
  ])('from %f to %f', (low, high, change) => {
    expect(changeOf({ low, high }, 1)).toEqual(change);
  });
});

describe('a range of a change', () => {
  const say = speaker('us');
  it.each([
    [-9, -3, '3 to 9 ft shorter'],
    [3, 9, '3 to 9 ft longer'],
    [-37.2, 2.2, '37 ft shorter to 2 ft longer'],
  ])('from %f to %f ft', (low, high, words) => {
    expect(signedRange({ low: low * feet, high: high * feet }, 'stopping-distance', say)).toBe(words);
  });
});

describe('a set-up as a subject', () => {
  it.each([
    ['Front kit', true, 'The front kit alone saves'],
    ['Front kit alone', true, 'The front kit alone saves'],
    ['Braided hoses only', true, 'The braided hoses alone save'],
    ['ABS off', true, '"ABS off" alone saves'],
    ['Four-wheel kit with a rear valve', true, 'The four-wheel kit with a rear valve saves'],
    ['Kit on other tires', false, 'The kit on other tires saves'],
    ['Pads and hoses', true, 'The pads and hoses alone save'],
    ['Step 2: rotors', false, '"Step 2: rotors" saves'],
  ])('%s', (title, alone, words) => {
    const { name, verb } = subjectOf(title, alone);
    expect(`${name} ${verb('save', 'saves')}`).toBe(words);
  });
});
