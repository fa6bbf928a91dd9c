import { describe, expect, test } from 'vitest';
import { isGapWord, numberField } from './number-field.ts';

describe('numberField', () => {
  test.each([
    ['0', 0],
    ['-0.5', -0.5],
    ['+12.25', 12.25],
    ['.5', 0.5],
    ['5.', 5],
    ['1e3', 1000],
    ['-1.5E-2', -0.015],
    [' 7.5 ', 7.5],
    ['1,234.5', 1234.5],
    ['123456789012345678', 123456789012345680],
    ['0.1234567890123456789', 0.12345678901234568],
    ['\u22123', -3],
  ])('%j', (text, value) => expect(numberField(text, false)).toBe(value));

  test.each([
    '',
    ' ',
    '-',
    '.',
    'abc',
    '12abc',
    '0x10',
    'Infinity',
    'NaN',
    '1,234',
    '1.2.3',
    '1e',
    '1e999',
    '--1',
    '12 3',
  ])('%j is no number', (text) => expect(numberField(text, false)).toBeNaN());

  test('decimal commas', () => {
    expect(numberField('12,5', true)).toBe(12.5);
    expect(numberField('1.234,5', true)).toBe(1234.5);
    expect(numberField('1.234', true)).toBeNaN();
    expect(numberField('-0,001', true)).toBe(-0.001);
  });

  test('words for nothing', () => {
    for (const word of ['', 'NA', 'n/a', ' NaN ', 'null', '--']) expect(isGapWord(word)).toBe(true);
    expect(isGapWord('0')).toBe(false);
  });
});
