import { describe, expect, test } from 'vitest';
import { randomStream } from '@standstill/numerics';
import { bytesOf } from './csv/made-csv.testing.ts';
import { readLog } from './read-log.ts';
import { sniffFormat } from './sniff-format.ts';

describe('what is none of the formats is named and refused', () => {
  test.each([
    ['<?xml version="1.0"?>\n<kml/>', 'XML'],
    ['<!DOCTYPE html><html></html>', 'web page'],
    ['[\n  {\n"a": 1 },\n', 'JSON'],
    ['{"speed":1,"time":2}\n{"speed":1,"time":3}\n', 'name, value and timestamp'],
    ['VERSION ""\n\nBO_ 36 KINEMATICS: 8 XXX\n SG_ A : 7|8@0+ (1,0) [0|1] "" X\n', 'DBC'],
    [
      ';$FILEVERSION=2.1\n      1      1059.900 DT     0300 Rx 7  00 00 00 00 04 00 00\n',
      'trace of version 2.1',
    ],
    ['PK\u0003\u0004rest of an archive', 'zip'],
    ['\u0000\u0001\u0002\u0003\u0004\u0005', 'binary'],
  ])('%j', (text, word) => {
    const read = readLog(bytesOf(text), { name: 'made' });
    expect(read).toMatchObject({ ok: false, code: 'log-not-read' });
    if (!read.ok) expect(read.sentence).toContain(word);
  });

  test.each([
    ['<?xml version="1.0"?>\n<gpx version="1.1"><trk/></gpx>', 'gpx'],
    ['\uFEFF<gpx xmlns="x">', 'gpx'],
    ['<!-- made --><g:gpx xmlns:g="x">', 'gpx'],
    ['(1436509052.249713) can0 0B0#0011\n(1436509052.25) can0 0B2#0022\n', 'candump'],
    ['(1436509052.249713) vcan0 18DAF110##3001122\n', 'candump'],
    ['  can0  0B0   [2]  00 11\n  can0  0B2   [2]  00 22\n', 'candump'],
    [' (001.000) can0  RX - -  0B0   [2]  00 11\n', 'candump'],
    ['     1)       1.4  Rx         0158  8  00 00\n     2)       2.4  Rx         0158  8  00 00\n', 'trace'],
    ['{"name":"speed","value":1,"timestamp":2}\n{"name":"speed","value":1,"timestamp":3}\n', 'json'],
    ['6$GVGYRO,0,-12.9,0\n14$GVVEHSP;1;49.7\n', 'records'],
    ['$GPRMC,120000,V,,,,,,,010326,,*2F\n', 'nmea'],
    ['t,v\n0,1\n', 'csv'],
  ])('%j is %s', (text, kind) => expect(sniffFormat(bytesOf(text))).toEqual({ kind }));

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
