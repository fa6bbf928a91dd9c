import { describe, expect, test } from 'vitest';
import type { ByteSource } from '../../channels/byte-source.ts';
import { searchStops } from '../../stops/find-stops.ts';
import { longestWhole } from '../bytes/whole-bytes.ts';
import { bytesOf, madeCsv } from '../csv/made-csv.testing.ts';
import { readLog } from '../read-log.ts';
import { madeDriveCsv } from './made-drive.testing.ts';
import { scanLog } from './scan-log.ts';

/** A source that hands out one and the same buffer, so that whoever keeps a piece sees it overwritten. */
function piecewise(bytes: Uint8Array): ByteSource {
  let buffer = new Uint8Array(0);
  return {
    size: bytes.length,
    read: (offset, length) => {
      const piece = bytes.subarray(offset, offset + length);
      if (buffer.length < piece.length) buffer = new Uint8Array(piece.length);
      buffer.set(piece);
      return buffer.subarray(0, piece.length);
    },
  };
}

describe('scanLog', () => {
  test('tells of a small log what reading and searching tell', () => {
    const bytes = bytesOf(madeCsv());
    const read = readLog(bytes, { name: 'made' });
    if (!read.ok) throw new Error(read.sentence);
    const search = searchStops(read.table, { nominalSpeed: 25 });
    const scan = scanLog(bytes, { name: 'made', nominalSpeed: 25 });
    expect(scan).toMatchObject({ ok: true, ...search, headings: 'Time (s) | Speed (km/h) | Note' });
    expect(scan).toMatchObject({
      duration: 8.9,
      channels: [{ name: 'Speed (km/h)', quantity: 'speed', chosenBy: 'guess' }, { name: 'Note' }],
    });
    expect(search.stops).toHaveLength(1);
    expect(scanLog(piecewise(bytes), { name: 'made', nominalSpeed: 25 })).toEqual(scan);
  });

  test('a log that comes in several pieces reads as one that comes at once', () => {
    const text = madeDriveCsv({ seed: 3, length: 2400, rate: 50 }).replace('\n1200.0000,', '\n"1200.0000" ,');
    const bytes = bytesOf(text);
    expect(bytes.length).toBeGreaterThan(2 ** 21);
    const [whole, pieces] = [readLog(bytes, { name: 'made' }), readLog(piecewise(bytes), { name: 'made' })];
    if (!whole.ok || !pieces.ok) throw new Error('refused');
    expect(pieces.table).toMatchObject({ source: { rows: 120_000 }, issues: [], segmentStarts: [0] });
    const columns = [whole, pieces].map(({ table }) => [
      table.time,
      ...table.channels.map(({ values }) => values),
    ]);
    expect(columns[0]).toHaveLength(4);
    columns[0]!.forEach((values, index) =>
      expect(values.every((value, row) => Object.is(value, columns[1]![index]![row]))).toBe(true),
    );
  });

  test('refuses what is too large to be read at once', () => {
    const source: ByteSource = { size: longestWhole + 1, read: () => bytesOf('$GPRMC,\n') };
    expect(scanLog(source, { name: 'made' })).toMatchObject({ ok: false, code: 'log-too-large' });
  });
});
