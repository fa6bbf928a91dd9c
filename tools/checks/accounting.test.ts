import { describe, expect, it } from 'vitest';
import { account, accountLines, accountProblems, counts, names } from './accounting.mjs';

const row = {
  id: '3-01a',
  source: 'a-book',
  quantity: 'a force',
  printed: 1,
  unit: 'N',
  tolerance: 0.5,
  basis: 'R',
  ours: 1,
  file: 'checks/a-book/force.check.ts',
};

/** Rows of `sources` sources, `each` of every one. */
function rowsOf(sources: number, each: number) {
  return Array.from({ length: sources }, (_, source) =>
    Array.from({ length: each }, (_none, index) => ({ ...row, source: `source-${source}`, id: `${index}` })),
  ).flat();
}

/** Eight parts, a section each; every source in one of them. */
const eight = Array.from({ length: 8 }, (_, index) => ({
  part: `part ${index}`,
  section: index + 1,
  rows: [`source-${index} *`, `source-${index + 8} *`],
}));

describe('the account of the evidence', () => {
  it('counts what is read or from memory, agrees, and is not in the code itself', () => {
    expect(counts(row)).toBe(true);
    expect(counts({ ...row, basis: 'M' })).toBe(true);
    expect(counts({ ...row, basis: 'X' })).toBe(false);
    expect(counts({ ...row, evidence: 'transcription' })).toBe(false);
    expect(counts({ ...row, expectedDifference: { follows: 2, reason: 'a slip' } })).toBe(false);
    expect(counts({ ...row, source: 'common-practice' })).toBe(false);
    const { printed: _, ...band } = row;
    expect(counts({ ...band, low: 0, high: 2 })).toBe(false);
  });

  it('counts no source more than five times, and finds nothing wrong with 16 sources of 3', () => {
    const enough = account(rowsOf(16, 3), eight);
    expect(enough.total).toBe(48);
    expect(accountProblems(enough)).toEqual([]);
    const crowded = account(rowsOf(16, 30), eight);
    expect(crowded.total).toBe(80);
    expect(accountLines(crowded).join('\n')).toContain('| source-3 | 30 | 5 |');
  });

  it('fails under 40 rows, under 15 sources, on an empty section and on a row that no part names', () => {
    const few = account(rowsOf(16, 2), eight);
    expect(accountProblems(few)).toEqual(['checks: 32 rows count for the physics; at least 40 are wanted']);
    const narrow = account(rowsOf(14, 5), eight);
    expect(accountProblems(narrow)).toEqual([
      'checks: 14 sources count for the physics; at least 15 are wanted',
    ]);
    const holed = account(
      rowsOf(16, 3).filter(({ source }) => !['source-4', 'source-12'].includes(source)),
      eight,
    );
    expect(accountProblems(holed)).toContain(
      'checks: no row counts for section 5 of the model, The pedal: travel and firmness',
    );
    expect(accountProblems(account([...rowsOf(16, 3), row], eight))).toEqual([
      'a-book 3-01a: no part of checks/parts.json names this row',
    ]);
  });

  it.each([0, 13])('takes units and statistics for no physics: section %i', (section) => {
    const parts = [...eight, { part: 'no brake', section, rows: ['a-book *'] }];
    const { total, sections } = account([...rowsOf(16, 3), row], parts);
    expect(total).toBe(48);
    expect(sections).toContainEqual({ section, rows: 1, read: 1, sources: 1 });
  });

  it('reads a star at the end of a name', () => {
    expect(names('gillespie 3-03*', 'gillespie 3-03b')).toBe(true);
    expect(names('gillespie 3-03', 'gillespie 3-03b')).toBe(false);
  });
});
