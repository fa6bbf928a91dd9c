import { describe, expect, it } from 'vitest';
import { printLogColumns } from './print-log-columns.ts';
import { readLogColumns } from './read-log-columns.ts';

const remembered = [
  {
    headings: 'time [s] | v: "raw" | Brk P',
    columns: {
      speed: { name: 'v: "raw"', unit: 'km/h' },
      'wheel-speed': [{ name: 'a', scale: 2 }, { name: 'b' }],
    },
  },
];

describe('a file of remembered columns', () => {
  it('comes back as it was written, whatever the headings hold', () => {
    expect(readLogColumns(printLogColumns(remembered))).toEqual({ ok: true, columns: remembered });
  });

  it.each([
    ['just: [', /no YAML/],
    ['standstill: 2', /logColumns/],
    ['logColumns: [{ headings: a, columns: { sped: { name: b } } }]', /^logColumns\.0\.columns: .*sped/],
    ['logColumns: [{ headings: a, columns: { speed: { name: 3 } } }]', /^logColumns\.0\.columns\.speed/],
  ])('%s is refused with its place', (text, sentence) => {
    const reading = readLogColumns(text);
    expect(reading.ok ? '' : reading.sentence).toMatch(sentence);
  });
});
