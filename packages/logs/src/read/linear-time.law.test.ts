import { describe, expect, test } from 'vitest';
import { bytesOf } from './csv/made-csv.testing.ts';
import { gpxAround, madeCandump, madeDbc, madeEpoch, trackPoint } from './made-logs.testing.ts';
import { readLog } from './read-log.ts';

/** s of computing; what takes time with the square of the size takes minutes on these. */
const enough = 20;

function readsSoon(text: string, signals = madeDbc): boolean {
  const from = performance.now();
  readLog(bytesOf(text), { name: 'made', signals: { name: 'made.dbc', text: signals } });
  return performance.now() - from < enough * 1000;
}

function many(count: number, line: (index: number) => string): string {
  return Array.from({ length: count }, (_, index) => line(index)).join('\n');
}

describe('what is long or deep or jumps takes no more than linear time', () => {
  const blanks = ' '.repeat(60_000);

  test.each([
    ['a time of blanks', many(40, () => `(${blanks}can0 0B0#00000000`)],
    ['blanks behind a frame', many(40, () => `(1.0) can0 0B0#00000000${blanks}x`)],
    ['bytes without an end', many(40, () => `(1.0) can0 0B0 [4]${' 00'.repeat(20_000)} x`)],
    ['a trace of blanks', `;$FILEVERSION=1.1\n${many(40, () => `1) 1.0 Rx 00B0 4${blanks}x`)}`],
    ['records of commas', many(40, (i) => `${i}$GVVEHSP${','.repeat(60_000)}`)],
    ['JSON of braces', many(40, () => `${'{"a":'.repeat(12_000)}}`)],
    ['sentences of commas', many(40, () => `$GPRMC${','.repeat(60_000)}*00`)],
    ['one line without an end', `(1.0) can0 0B0#${'0'.repeat(3_000_000)}`],
  ])('%s', (_, text) => expect(readsSoon(`${madeCandump().slice(0, 0)}${text}`)).toBe(true));

  test('a clock that is set back again and again', () => {
    const text = many(
      200_000,
      (i) => `(${(1000 - Math.floor(i / 8) * 2 + (i % 8)).toFixed(1)}) can0 0B0#00000000`,
    );
    expect(readsSoon(text)).toBe(true);
  });

  test('a GPX file of segments and of depth', () => {
    const segments = many(30_000, (i) => `${trackPoint(i)}</trkseg><trkseg>`);
    expect(readsSoon(gpxAround(segments))).toBe(true);
    expect(readsSoon(gpxAround('<trkpt>'.repeat(100_000)))).toBe(true);
    expect(madeEpoch).toBeGreaterThan(0);
  });

  test('a description of blanks, of ranges, of signals', () => {
    const log = '(1.0) can0 0B0#00000000\n(2.0) can0 0B0#00000000';
    const head = 'BO_ 176 M: 4 X\n';
    expect(readsSoon(log, `${head} SG_ A ${blanks}${blanks}: x`)).toBe(true);
    expect(
      readsSoon(
        log,
        `${head} SG_ A : 0|8@1+ (1,0) [0|0] "m/s" X\nSG_MUL_VAL_ 176 A B ${'1-1 '.repeat(20_000)}x`,
      ),
    ).toBe(true);
    expect(readsSoon(log, head + many(20_000, (i) => ` SG_ A${i} m${i} : 0|8@1+ (1,0) [0|0] "m/s" X`))).toBe(
      true,
    );
  });
});
