import { randomStream } from '@standstill/numerics';
import { expect, test } from 'vitest';
import { feedBytes } from '../bytes/feed-bytes.ts';
import type { ReadOutcome } from '../read-log.ts';
import { byteRows } from './byte-rows.ts';
import { csvTable } from './csv-table.ts';
import { libraryTable } from './library-table.testing.ts';
import { bytesOf, madeCsv } from './made-csv.testing.ts';
import { planCsv } from './plan-csv.ts';
import { readCsv } from './read-csv.ts';
import { RowStore } from './row-store.ts';
import { startsAtZero } from './time-reader.ts';

const shapes = [
  madeCsv(),
  madeCsv({ newline: '\r\n', header: ['Time [s]', 'Speed [km/h]', 'brake'] }),
  madeCsv({ newline: '\r' }),
  madeCsv({ delimiter: ';', decimal: ',' }),
  madeCsv({ delimiter: '\t', preamble: ['Öl', ''] }),
  madeCsv({ time: (seconds) => `12:00:${seconds.toFixed(3).padStart(6, '0')}` }),
  `\uFEFF${madeCsv({ quote: true })}`,
  madeCsv({ quote: true, newline: '\r\n', decimal: ',' }),
  madeCsv({ quote: true, newline: '\r', delimiter: ';' }),
  madeCsv({ header: ['"Time\n(s)"', 'Speed (km/h)', '"a ""note"""'] }),
];
const plain = [
  '',
  'NA',
  '-0',
  '1e3',
  ' 7 ',
  '+.5',
  '1234567890123456',
  '0.1234567890123456',
  '123456789.012345',
  'on',
  '\u2212',
  'x',
  '\n',
  '\r\n',
  ',',
  ';',
  '\t',
  '  \n',
];
const quoting = [
  '"',
  '""',
  '"5"',
  '"5" ',
  '"a\nb"',
  ',"7",',
  ',"7"8,',
  '"\n',
  '\n"',
  ',"',
  '",',
  '" ,',
  '"5\n"',
  '"\r\n',
];

/** Puts odd pieces in odd places. */
function damaged(text: string, pieces: readonly string[], seed: number): Uint8Array {
  const random = randomStream(17, `${seed}`);
  let changed = text;
  for (let change = random.below(8); change > 0; change -= 1) {
    const at = random.below(changed.length + 1);
    changed =
      changed.slice(0, at) + pieces[random.below(pieces.length)]! + changed.slice(at + random.below(6));
  }
  return bytesOf(changed);
}

/** The table read in pieces of some bytes. */
function inPieces(bytes: Uint8Array, length: number): ReadOutcome {
  const plan = planCsv(bytes, bytes.length, { name: 'made' });
  if (!plan.ok) return plan;
  const store = new RowStore({
    columns: plan.columns,
    issues: plan.issues,
    width: plan.dialect.width,
    zero: startsAtZero(plan.time) ? 0 : null,
    capacity: 4,
  });
  const source = { size: bytes.length, read: (at: number, count: number) => bytes.slice(at, at + count) };
  feedBytes(source, plan.fileEncoding, byteRows(plan, store), length);
  return csvTable(plan, store, bytes.length);
}

test.each([
  ['odd fields and line ends', plain, 200],
  ['quotation marks, open and closed, over lines and in them', [...quoting, ...plain], 600],
])('reading by bytes gives the same table, bit by bit, as the library: %s', (_, pieces, cases) => {
  let [read, open] = [0, 0];
  for (let seed = 0; seed < cases; seed += 1) {
    const bytes = damaged(shapes[seed % shapes.length]!, pieces, seed);
    const byBytes = readCsv(bytes, { name: 'made' });
    expect(byBytes, `case ${seed}`).toEqual(libraryTable(bytes));
    if (!byBytes.ok) continue;
    read += 1;
    if (byBytes.table.issues.some(({ code }) => code === 'open-quote')) open += 1;
    expect(inPieces(bytes, 1 + (seed % 97)), `case ${seed} in pieces`).toEqual(byBytes);
  }
  expect(read).toBeGreaterThan(cases / 2);
  if (pieces.includes('"')) expect(open).toBeGreaterThan(cases / 10);
});

test('UTF-16 gives the same table as UTF-8', () => {
  for (let seed = 0; seed < 100; seed += 1) {
    const bytes = damaged(shapes[seed % shapes.length]!, [...quoting, ...plain], seed);
    const text = new TextDecoder().decode(bytes);
    const wide = new Uint8Array(Uint16Array.from(`\uFEFF${text}`, (sign) => sign.charCodeAt(0)).buffer);
    const [narrow, read] = [readCsv(bytes, { name: 'made' }), readCsv(wide, { name: 'made' })];
    if (!narrow.ok) expect(read).toEqual(narrow);
    else
      expect(read).toMatchObject({ table: { ...narrow.table, source: { rows: narrow.table.time.length } } });
  }
});
