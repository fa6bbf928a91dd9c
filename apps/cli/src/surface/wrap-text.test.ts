import { describe, expect, it } from 'vitest';
import { visibleLength, wrapText } from './wrap-text.ts';

describe('a text on a narrow terminal', () => {
  it('is broken at spaces, and loses no word', () => {
    const text = 'From 60 mph the car now stops 21 to 27 ft shorter, but the tires were changed too.';
    const wrapped = wrapText(text, 30);
    expect(Math.max(...wrapped.split('\n').map((line) => line.length))).toBeLessThanOrEqual(30);
    expect(wrapped.replaceAll('\n', ' ')).toBe(text);
  });

  it('keeps lines that fit, with their columns', () => {
    const table = 'Stop   from\n1      60 mph';
    expect(wrapText(table, 15)).toBe(table);
  });

  it('hangs what follows an indented line', () => {
    expect(wrapText('  one two three', 9)).toBe('  one two\n    three');
  });

  it('does not count the codes that color, nor break a word that is too long', () => {
    const bold = `${String.fromCharCode(27)}[1mshort words${String.fromCharCode(27)}[22m`;
    expect(visibleLength(bold)).toBe(11);
    expect(wrapText(bold, 11)).toBe(bold);
    expect(wrapText('a https://example.invalid/long b', 8)).toBe('a\nhttps://example.invalid/long\nb');
  });
});
