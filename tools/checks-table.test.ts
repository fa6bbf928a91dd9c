import { describe, expect, it } from 'vitest';
import { partProblems, rowProblems, table } from './checks-table.mjs';

const row = {
  id: '5-17',
  source: 'brake-sheet',
  quantity: 'push at the cylinder',
  printed: 948.9,
  unit: 'N',
  tolerance: 0.05,
  basis: 'R',
  ours: 948.91234,
  file: 'checks/brake-sheet/pedal.check.ts',
};

describe('the table of published numbers', () => {
  it('prints ours with two digits more than the source and says where they differ', () => {
    const differing = {
      ...row,
      id: '5-18',
      ours: 949.1,
      expectedDifference: { follows: 949.1, reason: 'rounded twice' },
    };
    const page = table([row, differing]);
    expect(page).toContain(
      '| brake-sheet | 5-17 | push at the cylinder | 948.9 N | 948.912 | +0.012 | ±0.05 | R | agrees |',
    );
    expect(page).toContain('| 948.9 N | 949.100 | +0.200 | ±0.05 | R | differs |');
    expect(page).toContain(
      '- **brake-sheet 5-18** push at the cylinder: printed 948.9, follows 949.1. rounded twice',
    );
    expect(page).toContain('2 numbers from 1 sources; 1 of them are expected to differ');
  });

  it('keeps the zeros that the source prints, and exponents', () => {
    expect(table([{ ...row, printed: 70, tolerance: 0.05, ours: 70 }])).toContain('| 70.0 N | 70.000 | 0 |');
    const tiny = table([{ ...row, printed: 1.571e-25, unit: '', tolerance: 5e-29, ours: 1.57112e-25 }]);
    expect(tiny).toContain('| 1.571e-25 | 1.57112e-25 | 1.2e-29 |');
  });

  it('finds rows that are twice, without a source, in the wrong folder, and files without rows', () => {
    const files = [row.file, 'checks/brake-sheet/silent.check.ts'];
    const strange = { ...row, source: 'nowhere', id: '1' };
    expect(rowProblems([row, row, strange], files, new Set(['brake-sheet']))).toEqual([
      `${row.file}: brake-sheet 5-17 push at the cylinder is there twice`,
      `${row.file}: source 'nowhere' is not in docs/sources.md`,
      `${row.file}: source 'nowhere' belongs in checks/nowhere/`,
      'checks/brake-sheet/silent.check.ts: no rows; run the checks first (npx vitest run --project checks)',
    ]);
  });

  it('counts neither figures that were taken over nor bands, and shows them apart', () => {
    const copied = { ...row, id: '5-19', evidence: 'transcription' };
    const { printed: _, tolerance: __, ...rest } = row;
    const page = table([row, copied, { ...rest, id: '5-20', low: 900, high: 1000 }]);
    expect(page).toContain('\n1 numbers from 1 sources; 0 of them');
    const [, apart = ''] = page.split('## Bands');
    expect(apart).toContain('| brake-sheet | 5-20 | push at the cylinder | 900 to 1000 N | 949 | R |');
    expect(apart.split('## Figures taken over')[1]).toContain('| brake-sheet | 5-19 |');
  });

  it('names the rows that hold each part, and finds parts that nothing holds', () => {
    const parts = [
      { part: 'the pedal', section: 3, rows: ['brake-sheet 5-1*'] },
      { part: 'the knee', section: 3, rows: [], remark: 'no published value' },
      { part: 'the moon', section: 99, rows: ['brake-sheet 9-99'] },
      { part: 'nothing', section: 1, rows: [] },
    ];
    expect(table([row], parts)).toContain('| 3 | the knee | none | no published value |');
    expect(partProblems(parts, [row])).toEqual([
      "checks/parts.json: 'the moon' has no section of the model",
      "checks/parts.json: 'the moon' names 'brake-sheet 9-99', which no check has",
      "checks/parts.json: 'nothing' has neither a row nor a remark that says why",
    ]);
  });
});
