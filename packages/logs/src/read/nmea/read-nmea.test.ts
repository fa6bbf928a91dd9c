import { describe, expect, test } from 'vitest';
import type { ChannelTable } from '../../channels/channel-table.ts';
import { findStops } from '../../stops/find-stops.ts';
import { bytesOf } from '../csv/made-csv.testing.ts';
import { readLog } from '../read-log.ts';
import { madeDriveSpeed, madeNmea, nmeaTime, rmc, sentence } from './made-nmea.testing.ts';

function tableOf(lines: readonly string[], end = '\r\n'): ChannelTable {
  const read = readLog(bytesOf(lines.join(end) + end), { name: 'made.nmea' });
  if (!read.ok) throw new Error(read.sentence);
  return read.table;
}

function speedOf(table: ChannelTable): Float64Array {
  return table.channels.find(({ quantity }) => quantity === 'speed')!.values;
}

function counts(table: ChannelTable): Record<string, number> {
  return Object.fromEntries(table.issues.map(({ code, count }) => [code, count]));
}

const noon = 43_200;

function ggaAt(seconds: number, trust: string): string {
  return sentence(`GPGGA,${nmeaTime(seconds)},4800.0000,N,01100.0000,E,${trust},500.0,M,46.0,M,,`);
}

function ggaAndVtg(seconds: number, speed: number): string {
  const knots = (speed / 0.5144444444).toFixed(3);
  const vtg = sentence(`GPVTG,90.0,T,,M,${knots},N,${(speed * 3.6).toFixed(3)},K,A`);
  return `${ggaAt(seconds, '1,09,0.9')}\r\n${vtg}`;
}

test('a line far too long for a log is counted as skipped', () => {
  const [first = '', ...others] = madeNmea(noon);
  const table = tableOf([first, `$GPRMC,${'1'.repeat(1 << 17)}`, ...others]);
  expect(table.issues).toMatchObject([{ code: 'long-line', line: 2, count: 1 }]);
});

describe('a made drive', () => {
  test.each([['\r\n'], ['\n'], ['\r']])('with the line end %j', (end) => {
    const table = tableOf(madeNmea(noon), end);
    expect(table.time).toHaveLength(56);
    expect(table.epoch).toBe('2026-03-01T12:00:00.000Z');
    speedOf(table).forEach((speed, i) => expect(speed).toBeCloseTo(madeDriveSpeed(i / 5), 2));
    const [stop] = findStops(table);
    expect(stop!.entrySpeed).toBeCloseTo(20, 1);
    expect(stop!.meanFullyDevelopedDeceleration).toBeCloseTo(5, 1);
    expect(stop!.clock).toMatch(/^2026-03-01T12:00:0[23]\.\d{3}Z$/);
  });

  test('any talker, comments, lower-case checksums, sentences of other kinds', () => {
    const lines = madeNmea(noon, (s, v) =>
      rmc(s, v, 'A', '010326', 'GN').replace(/\*(..)$/, (sum) => sum.toLowerCase()),
    );
    const table = tableOf([
      '# a comment',
      ...lines,
      sentence('PGRME,5.5,M,7.0,M,8.9,M'),
      sentence('HCHDG,212.6,,,1.6,E'),
    ]);
    expect(table.issues).toEqual([]);
    expect(findStops(table)).toHaveLength(1);
  });

  test("a maker's own sentence that ends in RMC is not read", () => {
    const own = sentence(`PXRMC,${nmeaTime(noon)},A,4800.0000,N,01100.0000,E,99.0,90.0,010326,,,A`);
    expect(speedOf(tableOf([own, ...madeNmea(noon)])).every((speed) => speed < 21)).toBe(true);
  });

  test('over midnight, with and without a date', () => {
    const dated = tableOf(madeNmea(86_395, (s, v) => rmc(s, v, 'A', s < 86_400 ? '010326' : '020326')));
    expect(dated.segmentStarts).toEqual([0]);
    expect(dated.time[55]).toBeCloseTo(11, 6);
    const undated = tableOf(madeNmea(86_395, (s, v) => rmc(s, v, 'A', '')));
    expect(undated).toMatchObject({ epoch: null, segmentStarts: [0] });
    expect(undated.time[55]).toBeCloseTo(11, 6);
    expect(findStops(undated)[0]!.clock).toMatch(/^23:59:5[78]\.\d{3}$/);
    expect(counts(undated)).toEqual({ 'no-date': 1 });
  });
});

describe('what the receiver does not vouch for', () => {
  test('a void fix is a gap, never zero', () => {
    const table = tableOf(madeNmea(noon, (s, v) => rmc(s, v, s > noon + 2 ? 'V' : 'A')));
    expect(Array.from(speedOf(table)).filter((speed) => Number.isNaN(speed))).toHaveLength(45);
    expect(Array.from(speedOf(table))).not.toContain(0);
    expect(counts(table)).toEqual({ 'void-fix': 45 });
    expect(findStops(table)).toEqual([]);
  });

  test('a log with void fixes only is read and holds no stop', () => {
    const table = tableOf(madeNmea(noon, (s, v) => rmc(s, v, 'V')));
    expect(speedOf(table).every(Number.isNaN)).toBe(true);
    expect(findStops(table)).toEqual([]);
  });

  test('GGA without a fix voids the moment', () => {
    const table = tableOf(madeNmea(noon, (s, v) => `${ggaAt(s, '0,03,9.9')}\r\n${rmc(s, v)}`));
    expect(speedOf(table).every(Number.isNaN)).toBe(true);
  });

  test("VTG with GGA gives the speed, on no day but the log's own", () => {
    const table = tableOf(madeNmea(noon, ggaAndVtg));
    expect(table.epoch).toBeNull();
    expect(findStops(table)).toHaveLength(1);
    expect(table.channels.map(({ name }) => name)).toContain('VTG speed');
  });

  test('damage is counted by kind and line', () => {
    const lines = madeNmea(noon);
    lines[3] = lines[3]!.replace('A,4800', 'A,4900');
    lines[5] = lines[5]!.replace(/\*..$/, '');
    lines[7] = lines[7]!.replace('4800', '48\u00000');
    lines[9] = `$GPGSV,3,1,12,20,7${lines[9]!}`;
    lines[11] = 'half a line';
    lines[13] = sentence('GPRMC,120000,A');
    const table = tableOf(lines);
    expect(table.issues).toMatchObject([
      { code: 'bad-checksum', line: 4, count: 1 },
      { code: 'no-checksum', line: 6, count: 2 },
      { code: 'not-ascii', line: 8, count: 1 },
      { code: 'torn-line', line: 10, count: 1 },
      { code: 'not-a-sentence', line: 12, count: 1 },
      { code: 'not-understood', line: 14, count: 1 },
    ]);
    expect(table.time).toHaveLength(51);
  });

  test('a clock that jumps back starts a new segment', () => {
    const table = tableOf([...madeNmea(noon), ...madeNmea(noon - 3000)]);
    expect(table.segmentStarts).toEqual([0, 56]);
    expect(counts(table)).toEqual({ 'clock-jump-back': 1 });
    expect(findStops(table).map(({ clock }) => clock!.slice(11, 16))).toEqual(['12:00', '11:10']);
  });
});

describe('the last clauses of the sentences', () => {
  const place = '4800.0000,N,01100.0000,E';

  test.each([
    ['E', 0],
    ['M', 0],
    ['S', 0],
    ['N', 0],
    ['A', 56],
    ['D', 56],
    ['R', 56],
    ['P', 56],
    ['', 56],
  ])('RMC with the mode %j tells %d speeds', (mode, told) => {
    const table = tableOf(
      madeNmea(noon, (s, v) =>
        sentence(`GPRMC,${nmeaTime(s)},A,${place},${(v / 0.5144444444).toFixed(3)},90.0,010326,,,${mode}`),
      ),
    );
    expect(speedOf(table).filter((speed) => !Number.isNaN(speed))).toHaveLength(told);
  });

  test.each([
    ['6,09,0.9', true],
    ['7,09,0.9', false],
    ['8,09,0.9', false],
  ])('GGA with quality %s beside a good RMC', (trust, isTrusted) => {
    const table = tableOf(madeNmea(noon, (s, v) => `${ggaAt(s, trust)}\r\n${rmc(s, v)}`));
    expect(speedOf(table).some((speed) => !Number.isNaN(speed))).toBe(isTrusted);
  });

  test('course, altitude, satellites and dilution are kept, in SI', () => {
    const table = tableOf(madeNmea(noon, (s, v) => `${rmc(s, v)}\r\n${ggaAt(s, '4,11,0.7')}`));
    const first = Object.fromEntries(table.channels.map(({ name, values }) => [name, values[0]]));
    expect(first).toMatchObject({
      altitude: 500,
      'GGA fix quality': 4,
      satellites: 11,
      'horizontal dilution': 0.7,
    });
    expect(first['heading']).toBeCloseTo(Math.PI / 2, 12);
    expect(first['latitude']).toBeCloseTo((48 * Math.PI) / 180, 12);
    expect(table.channels.find(({ name }) => name === 'heading')!.quantity).toBe('heading');
  });

  test('the date comes from ZDA where RMC has none', () => {
    const table = tableOf(
      madeNmea(
        noon,
        (s, v) => `${sentence(`GPZDA,${nmeaTime(s)},01,03,2026,00,00`)}\r\n${rmc(s, v, 'A', '')}`,
      ),
    );
    expect(table.epoch).toBe('2026-03-01T12:00:00.000Z');
    expect(table.time).toHaveLength(56);
  });

  test('position ten times a second, speed once: one time base, gaps between', () => {
    const lines = madeNmea(noon).flatMap((line, i) => [
      ...(i % 5 === 0 ? [line] : []),
      ggaAt(noon + i / 5, '1,09,0.9'),
      ggaAt(noon + i / 5 + 0.1, '1,09,0.9'),
    ]);
    const table = tableOf(lines);
    expect(table.time).toHaveLength(112);
    expect(speedOf(table).filter((speed) => !Number.isNaN(speed))).toHaveLength(12);
    expect(table.segmentStarts).toEqual([0]);
  });

  test.each([
    ['a speed with a letter in it', `A,${place},12x4,90.0,010326,,,A`],
    ['a negative speed', `A,${place},-3.0,90.0,010326,,,A`],
    ['a latitude beyond the pole', 'A,9900.0000,N,01100.0000,E,12.4,90.0,010326,,,A'],
    ['sixty-one minutes', 'A,4861.0000,N,01100.0000,E,12.4,90.0,010326,,,A'],
    ['no hemisphere', 'A,4800.0000,,01100.0000,E,12.4,90.0,010326,,,A'],
    ['a course beyond the circle', `A,${place},12.4,400.0,010326,,,A`],
    ['a status that is none', `X,${place},12.4,90.0,010326,,,A`],
  ])('%s breaks the format', (_, rest) => {
    const lines = madeNmea(noon);
    lines[7] = sentence(`GPRMC,${nmeaTime(noon + 7 / 5)},${rest}`);
    const table = tableOf(lines);
    expect(counts(table)).toEqual({ 'not-understood': 1 });
    expect(table.time).toHaveLength(55);
  });

  test('GGA alone gives a speed from its positions, and says so', () => {
    const north = (meters: number): string => {
      const minutes = (meters / 6_371_008.8) * (180 / Math.PI) * 60;
      return `48${minutes.toFixed(6).padStart(9, '0')}`;
    };
    const way = (t: number): number =>
      t < 3 ? 20 * t : t < 7 ? 60 + 20 * (t - 3) - 2.5 * (t - 3) ** 2 : 100;
    const table = tableOf(
      madeNmea(noon, (s) =>
        sentence(`GNGGA,${nmeaTime(s)},${north(way(s - noon))},N,01100.0000,E,1,09,0.9,500.0,M,46.0,M,,`),
      ),
    );
    expect(counts(table)).toEqual({ 'no-date': 1, 'speed-from-positions': 1 });
    const speed = speedOf(table);
    for (let i = 1; i < 55; i += 1)
      if (Math.abs(i / 5 - 3) > 0.3 && Math.abs(i / 5 - 7) > 0.3)
        expect(speed[i]).toBeCloseTo(madeDriveSpeed(i / 5), 1);
    expect(findStops(table)).toHaveLength(1);
  });
});

describe('refused in one sentence', () => {
  test.each([
    [[rmc(noon, 5)], 'log-one-sample'],
    [madeNmea(noon).map((line) => line.replace(/\*..$/, '*ZZ')), 'log-no-rows'],
    [
      [0, 1, 2].map((s) => sentence(`GPGGA,${nmeaTime(noon + s)},,,,,1,09,0.9,500.0,M,46.0,M,,`)),
      'log-no-speed',
    ],
  ])('%#', (lines, code) => {
    const read = readLog(bytesOf(lines.join('\n')), { name: 'made.nmea' });
    expect(read).toMatchObject({ ok: false, code });
  });
});
