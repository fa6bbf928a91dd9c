import { describe, expect, it } from 'vitest';
import { rowProblems, table } from './checks-table.mjs';

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
    const differing = { ...row, id: '5-18', ours: 949.1, expectedDifference: { reason: 'rounded twice' } };
    const page = table([row, differing]);
    expect(page).toContain(
      '| brake-sheet | 5-17 | push at the cylinder | 948.9 N | 948.912 | +0.012 | ±0.05 | R | agrees |',
    );
    expect(page).toContain('| 948.9 N | 949.100 | +0.200 | ±0.05 | R | differs |');
    expect(page).toContain('- **brake-sheet 5-18** push at the cylinder: rounded twice');
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
});
