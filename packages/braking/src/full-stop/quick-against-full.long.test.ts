import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { antilockEfficiency } from '../stop/antilock-efficiency.ts';
import { stopKinds } from './drawn-stops.testing.ts';
import { errorPage, errorTable, sharedKinds } from './quick-error-table.testing.ts';
import { errorSizes, fittedEfficiency } from './quick-error.testing.ts';

const page = new URL('../../../../docs/quick-against-full.md', import.meta.url);
const table = errorTable(1000 / sharedKinds.length);

/** The numbers in the rows of a page's table, in their order. */
function figures(text: string): readonly number[] {
  const rows = text.split('\n').filter((line) => /^\|.*\d/.test(line));
  return rows.flatMap((line) => [...line.matchAll(/(?<=\| )-?[\d.]+/g)].map(([figure]) => Number(figure)));
}

describe('the quick stop against the full stop, 1,000 cars by a seed that nothing was tuned on', () => {
  it('is off by less than 1.5 % in the median and 4 % in 95 of 100', () => {
    const { median, high } = errorSizes(table.all);
    expect(table.all.length).toBe(1000);
    expect(median).toBeLessThan(0.015);
    expect(high).toBeLessThan(0.04);
  });

  it.each(stopKinds)('so it is by itself where a stop is %s', (kind) => {
    const { median, high } = errorSizes(table.byKind[kind]);
    expect(median).toBeLessThan(0.015);
    expect(high).toBeLessThan(0.04);
  });

  it('is as its page says', () => {
    const text = errorPage(table);
    if (process.env.STANDSTILL_WRITE === '1') writeFileSync(page, text);
    const printed = figures(readFileSync(page, 'utf8'));
    const ours = figures(text);
    expect(printed.length).toBe(ours.length);
    ours.forEach((figure, at) => {
      expect(Math.abs(figure - printed[at]!)).toBeLessThanOrEqual(0.1);
    });
  });
});

describe('the efficiency of the antilock', () => {
  it('is the one fitted to full stops on dry and on wet roads', () => {
    const road = { surfaceFactor: 1, waterDepth: 0 };
    const dry = fittedEfficiency('antilock dry', 400, 2024);
    const wet = fittedEfficiency('antilock wet', 400, 2024);
    expect(Math.abs(dry - antilockEfficiency(road))).toBeLessThan(1e-3);
    expect(Math.abs(wet - antilockEfficiency({ ...road, waterDepth: 5e-4 }))).toBeLessThan(1e-3);
  });
});
