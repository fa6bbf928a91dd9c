import { describe, expect, test } from 'vitest';
import { randomStream } from '@standstill/numerics';
import { bytesOf } from './csv/made-csv.testing.ts';
import { readLog } from './read-log.ts';

describe('what is no CSV and no NMEA is named and refused', () => {
  test.each([
    ['<?xml version="1.0"?>\n<gpx version="1.1"><trk/></gpx>', 'GPX'],
    ['\uFEFF<gpx xmlns="x">', 'GPX'],
    ['<!DOCTYPE html><html></html>', 'web page'],
    ['(1436509052.249713) can0 0B0#0011\n(1436509052.25) can0 0B2#0022\n', 'candump'],
    ['     1)       1.4  Rx         0158  8  00 00\n     2)       2.4  Rx         0158  8  00 00\n', 'CAN'],
    ['{"name":"speed","value":1,"timestamp":2}\n{"name":"speed","value":1,"timestamp":3}\n', 'JSON'],
    ['[\n  {\n"a": 1 },\n', 'JSON'],
    ['6$GVGYRO,0,-12.9,0\n14$GVVEHSP;1;49.7\n', 'mixed separators'],
    ['PK\u0003\u0004rest of an archive', 'zip'],
    ['\u0000\u0001\u0002\u0003\u0004\u0005', 'binary'],
  ])('%j', (text, word) => {
    const read = readLog(bytesOf(text), { name: 'made' });
    expect(read).toMatchObject({ ok: false, code: 'log-not-read' });
    if (!read.ok) expect(read.sentence).toContain(word);
  });

  test('200 MB of noise are refused at once', () => {
    const bytes = new Uint8Array(200_000_000);
    const random = randomStream(4);
    for (let i = 0; i < 1 << 17; i += 1) bytes[i] = random.below(256);
    bytes.copyWithin(1 << 17, 0, 1 << 17);
    const from = performance.now();
    expect(readLog(bytes, { name: 'noise' })).toMatchObject({ ok: false, code: 'log-not-read' });
    expect(performance.now() - from).toBeLessThan(1000);
  });
});
