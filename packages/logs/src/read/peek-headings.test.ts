import { expect, test } from 'vitest';
import { bytesOf, madeCsv } from './csv/made-csv.testing.ts';
import { peekHeadings } from './peek-headings.ts';
import { readLog } from './read-log.ts';

test('headings are those of the channel table, also where the log can not be read without a word on its columns', () => {
  const bytes = bytesOf(madeCsv());
  const read = readLog(bytes, { name: 'made' });
  expect(peekHeadings(bytes)).toBe(read.ok ? read.table.headings : 'not read');
  expect(
    peekHeadings({ size: bytes.length, read: (from, length) => bytes.subarray(from, from + length) }),
  ).toBe('Time (s) | Speed (km/h) | Note');
  const unknown = bytesOf(`a;b\n${Array.from({ length: 30 }, (_, row) => `${row};${row * 2}`).join('\n')}\n`);
  expect(readLog(unknown, { name: 'unknown' }).ok).toBe(false);
  expect(peekHeadings(unknown)).toBe('a | b');
});

test('a log without a row of headings has none', () => {
  expect(peekHeadings(bytesOf(''))).toBeNull();
  expect(peekHeadings(bytesOf('$GPRMC,1\n$GPRMC,2\n'))).toBeNull();
  expect(peekHeadings(bytesOf('1,2\n2,3\n3,4\n'))).toBeNull();
});
