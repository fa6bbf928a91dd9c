import { describe, expect, test } from 'vitest';
import type { ChannelTable } from '../../channels/channel-table.ts';
import { findStops } from '../../stops/find-stops.ts';
import { readLog, type ReadOptions } from '../read-log.ts';
import { bytesOf, madeCsv, madeDrive, type CsvShape } from './made-csv.testing.ts';

function tableOf(text: string | Uint8Array, options: Partial<ReadOptions> = {}): ChannelTable {
  const read = readLog(typeof text === 'string' ? bytesOf(text) : text, { name: 'made.csv', ...options });
  if (!read.ok) throw new Error(read.sentence);
  return read.table;
}

function refusal(text: string, options: Partial<ReadOptions> = {}): { code: string; sentence: string } {
  const read = readLog(bytesOf(text), { name: 'made.csv', ...options });
  if (read.ok) throw new Error('was read');
  return read;
}

function speedOf(table: ChannelTable): Float64Array {
  return table.channels.find(({ quantity }) => quantity === 'speed')!.values;
}

function codes(table: ChannelTable): string[] {
  return table.issues.map(({ code }) => code);
}

const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
const clock = (seconds: number, from = 0): string => {
  const at = (from + seconds) % 86_400;
  return `${two(at / 3600)}:${two((at / 60) % 60)}:${(at % 60).toFixed(3).padStart(6, '0')}`;
};

const clock12 = (seconds: number, from: number): string => {
  const at = (from + seconds) % 86_400;
  const hour = Math.floor(at / 3600);
  return `${hour % 12 === 0 ? 12 : hour % 12}${clock(seconds, from).slice(2)} ${hour < 12 ? 'AM' : 'PM'}`;
};

const shapes: Record<string, CsvShape> = {
  commas: {},
  semicolons: { delimiter: ';' },
  tabs: { delimiter: '\t' },
  bars: { delimiter: '|' },
  'semicolons with decimal commas': { delimiter: ';', decimal: ',' },
  'tabs with decimal commas': { delimiter: '\t', decimal: ',' },
  'quoted commas with decimal commas': { decimal: ',', quote: true },
  quotes: { quote: true },
  'CR LF': { newline: '\r\n' },
  'lone CR': { newline: '\r' },
  'quotes and CR LF': { quote: true, newline: '\r\n' },
  'a row of units': { header: ['Time', 'Speed', 'Note'], units: ['s', 'km/h', ''] },
  'a row of units in brackets': { header: ['Time', 'Speed', 'Note'], units: ['[s]', '[km/h]', '[-]'] },
  'lines above the headings': { preamble: ['Made log', 'Driver: nobody', '', 'Rate;10'] },
  'a preamble of as many fields': { preamble: ['a,b,c'] },
  'milliseconds in the heading': {
    header: ['time_ms', 'speed_kmh', 'n'],
    time: (s) => (1000 * s).toFixed(0),
  },
  'milliseconds in the unit': {
    header: ['Time [ms]', 'Speed [km/h]', 'n'],
    time: (s) => (1000 * s).toFixed(0),
  },
  microseconds: { header: ['Time [µs]', 'Speed [km/h]', 'n'], time: (s) => (1e6 * s).toFixed(0) },
  'times of day': { header: ['Time', 'Vehicle Speed Sensor [km/h]', 'n'], time: (s) => clock(s, 7 * 3600) },
  'times of day over midnight': { header: ['Time', 'Speed [km/h]', 'n'], time: (s) => clock(s, 86_397) },
  'minutes and seconds': { header: ['Time', 'Speed [km/h]', 'n'], time: (s) => clock(s).slice(3) },
  'ISO times': { header: ['timestamp', 'speed km/h', 'n'], time: (s) => `2026-03-01T${clock(s, 43_200)}Z` },
  'ISO times with a zone': {
    header: ['timestamp', 'speed: km/h', 'n'],
    time: (s) => `2026-03-01 ${clock(s, 43_200)}+02:00`,
  },
  '12-hour clock': {
    header: ['Time', 'Speed [km/h]', 'n'],
    time: (s) => clock12(s, 43_197),
  },
  'days, months and years with dots': {
    header: ['Zeit', 'Speed [km/h]', 'n'],
    time: (s) => `1.3.2026 ${clock(s, 43_200)}`,
  },
  'days before months, told by the day': {
    header: ['Time', 'Speed [km/h]', 'n'],
    time: (s) => `13/3/2026 ${clock(s, 43_200)}`,
  },
  'months before days with a 12-hour clock': {
    header: ['Time', 'Speed [km/h]', 'n'],
    time: (s) => `3/13/2026 ${clock12(s, 43_197)}`,
  },
  'a date that may be two, with a time behind it': {
    header: ['Time', 'Speed [km/h]', 'n'],
    time: (s) => `3/4/2026 ${clock(s, 43_200)}`,
  },
  "a spreadsheet's days": {
    header: ['Time', 'Speed [km/h]', 'n'],
    time: (s) => (46_082.5 + s / 86_400).toFixed(9),
  },
  'clock readings under another heading': {
    header: ['Moment', 'Speed [km/h]', 'n'],
    time: (s) => clock(s, 43_200),
  },
  'seconds since 1970': { header: ['utc', 'Speed (km/h)', 'n'], time: (s) => (1.7e9 + s).toFixed(2) },
  'milliseconds since 1970': {
    header: ['timestamp', 'Speed (km/h)', 'n'],
    time: (s) => (1.7e12 + 1000 * s).toFixed(0),
  },
};

describe('every way to write the same drive gives the same channel', () => {
  test.each(Object.entries(shapes))('%s', (_, shape) => {
    const table = tableOf(madeCsv(shape));
    expect(table.time).toHaveLength(madeDrive().length);
    expect(table.segmentStarts).toEqual([0]);
    const from = table.time[0]!;
    madeDrive().forEach(({ time, speed }, i) => {
      expect(table.time[i]! - from).toBeCloseTo(time, 3);
      expect(speedOf(table)[i]).toBeCloseTo(speed / 3.6, 3);
    });
    expect(findStops(table)).toHaveLength(1);
  });
});

describe('encodings', () => {
  const text = madeCsv({ header: ['Time (s)', 'Speed (km/h)', 'Öl [°C]'] });
  const wide = (order: 'le' | 'be'): Uint8Array => {
    const bytes = new Uint8Array(2 + 2 * text.length);
    const view = new DataView(bytes.buffer);
    view.setUint16(0, 0xfeff, order === 'le');
    for (let i = 0; i < text.length; i += 1) view.setUint16(2 + 2 * i, text.charCodeAt(i), order === 'le');
    return bytes;
  };
  const cases: Record<string, Uint8Array> = {
    'UTF-8': bytesOf(text),
    'UTF-8 with a byte order mark': bytesOf(`\uFEFF${text}`),
    'UTF-16, little end first': wide('le'),
    'UTF-16, big end first': wide('be'),
    'one byte a character': Uint8Array.from(text, (sign) => sign.charCodeAt(0)),
    'UTF-8 encoded twice': bytesOf(text.replace('°', 'Â°')),
  };
  test.each(Object.entries(cases))('%s', (_, bytes) => {
    const table = tableOf(bytes);
    expect(table.channels.map(({ name: label }) => label)).toEqual(['Speed (km/h)', 'Öl [°C]']);
    expect(table.channels[1]).toMatchObject({
      quantity: 'temperature',
      unitAsRead: '°C',
      unitOrigin: 'header',
    });
  });
});

describe('units', () => {
  test.each([
    ['Speed [mph]', 60, 26.8224],
    ['speed_mph', 60, 26.8224],
    ['speedMph', 60, 26.8224],
    ['v (m/s)', 30, 30],
    ['speed_ms', 30, 30],
    ['GPS Speed kn', 50, 25.7222],
    ['speed_kts', 50, 25.7222],
    ['Geschwindigkeit [km/h]', 90, 25],
    ['speed in ft/s', 100, 30.48],
    ['Vehicle speed / KPH', 90, 25],
  ])('%s', (heading, number, metersPerSecond) => {
    const table = tableOf(`t [s],${heading}\n0,${number}\n0.1,${number}\n`);
    expect(speedOf(table)[0]).toBeCloseTo(metersPerSecond, 4);
    expect(table.channels[0]!.unitOrigin).toBe('header');
  });

  test('a unit is never guessed for a speed', () => {
    expect(refusal('time,speed\n0,30\n0.1,29\n')).toMatchObject({ code: 'log-speed-without-unit' });
    expect(refusal('time,speed [furlongs/fortnight]\n0,30\n0.1,29\n').sentence).toContain(
      'furlongs/fortnight',
    );
  });

  test('a given unit, scale or word of doubt is kept with the channel', () => {
    const text = 'time,speed\n0,0.5\n0.1,0.4\n';
    const given = tableOf(text, { columns: { speed: { name: 'speed', unit: 'km/h', scale: 180 } } });
    expect(speedOf(given)[0]).toBeCloseTo(25, 10);
    expect(given.channels[0]!.unitOrigin).toBe('given');
    const doubted = tableOf(text, { columns: { speed: { name: 'Speed', unit: 'km/h', assumed: true } } });
    expect(doubted.channels[0]!.unitOrigin).toBe('assumed');
    expect(speedOf(tableOf(text, { speedScale: 40 }))[0]).toBeCloseTo(20, 10);
    expect(refusal(text, { columns: { speed: { name: 'speed', unit: 'psi' } } }).code).toBe(
      'log-unknown-unit',
    );
    expect(refusal(text, { columns: { speed: { name: 'velocity', unit: 'km/h' } } }).sentence).toContain(
      "'speed'",
    );
  });

  test('a person overrules a guess', () => {
    const text = 'clock,speed [km/h],true speed [km/h]\n0,90,72\n0.1,90,72\n';
    const table = tableOf(text, { timeColumn: 'clock', columns: { speed: { name: 'true speed [km/h]' } } });
    expect(table.channels.map(({ quantity }) => quantity)).toEqual(['unknown', 'speed']);
  });

  test('other quantities', () => {
    const heading =
      'time [s],speed [km/h],Brake Pressure [bar],Pedal Force (lbf),brake,accel_x [g],lat,Heading [deg],Brake Temp FL [°F],brake_x';
    const table = tableOf(`${heading}\n0,36,10,20,0,-0.5,48,180,212,1\n0.1,36,10,20,1,-0.5,48,180,212,2\n`);
    const found = Object.fromEntries(table.channels.map(({ quantity, values }) => [quantity, values[0]]));
    expect(found).toMatchObject({ 'brake-pressure': 1e6, 'brake-switch': 0 });
    expect(found['latitude']).toBeCloseTo((48 * Math.PI) / 180, 12);
    expect(found['pedal-force']).toBeCloseTo(88.964432, 5);
    expect(found['acceleration-forward']).toBeCloseTo(-4.903325, 9);
    expect(found['heading']).toBeCloseTo(Math.PI, 12);
    expect(found['temperature']).toBeCloseTo(100, 9);
    expect(codes(table)).toContain('unit-assumed');
  });
});

describe('what is skipped is counted, with the first line that shows it', () => {
  test('gaps are gaps, words are gaps and said', () => {
    const table = tableOf('t [s],v [m/s]\n0,10\n0.1,NA\n0.2,\n0.3,oops\n0.4,9\n');
    expect(Array.from(speedOf(table))).toEqual([10, NaN, NaN, NaN, 9]);
    expect(table.issues).toMatchObject([{ code: 'not-a-number', line: 5, count: 1 }]);
  });

  test('ragged rows are skipped, never merged', () => {
    const table = tableOf('t [s],v [m/s]\n0,10\n1\n1,2,3\n0.2,9,\n\n0.3,8\n0.4');
    expect(Array.from(table.time)).toEqual([0, 0.2, 0.3]);
    expect(table.issues).toMatchObject([{ code: 'ragged-row', line: 3, count: 3 }]);
  });

  test('rows without a time, and two rows at one time', () => {
    const table = tableOf('t [s],v [m/s]\n0,10\nx,10\n0.1,9\n0.1,8\n0.2,7\n');
    expect(Array.from(speedOf(table))).toEqual([10, 9, 7]);
    expect(codes(table)).toEqual(['row-without-time', 'repeated-time']);
  });

  test('two logs pasted into one: the same headings again are one row less, other ones end the log', () => {
    const first = 't [s],v [km/h]\n0,36\n0.1,35\n0.2,34\n';
    const again = tableOf(`${first}t [s],v [km/h]\n5,36\n5.1,35\n`);
    expect(again.time).toHaveLength(5);
    expect(codes(again)).toEqual(['row-without-time', 'time-gap']);
    for (const below of [
      't [s],v [mph]\n5,36\n5.1,35\n',
      'Speed,Time\n36,5\n',
      '"t [s]","v [mph]"\n5,36\n',
    ]) {
      const table = tableOf(first + below);
      expect(Array.from(table.time)).toEqual([0, 0.1, 0.2]);
      const lines = below.split('\n').length - 1;
      expect(table.issues).toMatchObject([{ code: 'other-headings', line: 5, count: lines }]);
    }
    expect(codes(tableOf(`${first}lap,2\n0.3,33\n`))).toEqual(['row-without-time']);
  });

  test('a clock that jumps back and a gap start new segments', () => {
    const table = tableOf('t [s],v [m/s]\n5,1\n5.1,1\n2,1\n2.1,1\n9,1\n9.1,1\n');
    expect(table.segmentStarts).toEqual([0, 2, 4]);
    expect(Array.from(table.time).every((time, i) => i === 0 || time > table.time[i - 1]!)).toBe(true);
    expect(codes(table)).toEqual(['clock-jump-back', 'time-gap']);
  });

  test('two columns of one name, a missing heading, a column of words', () => {
    const table = tableOf('t [s],v [m/s],v [m/s],,note\n0,1,2,3,dry\n0.1,1,2,3,dry\n');
    expect(table.channels.map(({ name }) => name)).toEqual(['v [m/s]', 'v [m/s] (2)', 'column 4']);
    expect(codes(table)).toEqual(['double-heading', 'text-column']);
  });

  test('an open quote splits the lines plainly and is said', () => {
    const table = tableOf(madeCsv().replace('\n1.000,', '\n"1.000,'));
    expect(codes(table)).toContain('open-quote');
    expect(table.time.length).toBeGreaterThan(80);
  });

  test('equal fields in the first row of a piece stay what they are', () => {
    const rows = Array.from({ length: 120_000 }, (_, i) => `${(i / 100).toFixed(2)},10.5,10.5,10.5`);
    const table = tableOf(`t [s],v [m/s],a,b\n${rows.join('\n')}\n`);
    expect(table.issues).toEqual([]);
    expect(table.channels.every(({ values }) => values.every((value) => value === 10.5))).toBe(true);
  });

  test('headings in quotes over two lines', () => {
    const table = tableOf('"t\n[s]","v\n[m/s]"\n0,10\n0.1,bad\n0.2,9\n0.3,8\n');
    expect(table.channels[0]).toMatchObject({ name: 'v [m/s]', quantity: 'speed' });
    expect(table.issues[0]).toMatchObject({ code: 'not-a-number' });
  });
});

describe('clocks', () => {
  test('the moment of a stop is told as the source tells time', () => {
    const iso = tableOf(madeCsv(shapes['ISO times']));
    expect(iso.epoch).toBe('2026-03-01T12:00:00.000Z');
    expect(findStops(iso)[0]!.clock).toMatch(/^2026-03-01T12:00:0[12]\.\d{3}Z$/);
    const day = tableOf(madeCsv(shapes['times of day']));
    expect(day.epoch).toBeNull();
    expect(findStops(day)[0]!.clock).toMatch(/^07:00:0[12]\.\d{3}$/);
    expect(findStops(tableOf(madeCsv(shapes['times of day over midnight'])))[0]!.clock).toMatch(
      /^23:59:5[89]\.\d{3}$/,
    );
    expect(findStops(tableOf(madeCsv()))[0]!.clock).toBeNull();
  });

  test('a time column without a unit is read and said', () => {
    expect(codes(tableOf('t,v [m/s]\n0,1\n0.1,1\n0.2,1\n'))).toEqual(['time-unit-assumed']);
    const table = tableOf('t,v [m/s]\n0,1\n20,1\n40,1\n');
    expect(Array.from(table.time)).toEqual([0, 0.02, 0.04]);
  });

  test('a day that no month has is no time', () => {
    const table = tableOf(
      'timestamp,v [m/s]\n2026-02-28T12:00:00Z,1\n2026-02-30T12:00:01Z,1\n2026-02-28T12:00:02Z,1\n',
    );
    expect(table.time).toHaveLength(2);
    expect(codes(table)).toEqual(['row-without-time']);
  });
});

describe('date and time in two columns', () => {
  const drive = (date: (seconds: number) => string, from: number, heading = 'Date'): string =>
    `${heading},Time,Speed [km/h]\n${madeDrive()
      .map(({ time, speed }) => `${date(time)},${clock(time, from)},${speed.toFixed(3)}`)
      .join('\n')}\n`;

  test.each([
    ['year first', '2026-03-01'],
    ['in one number', '20260301'],
    ['with dots', '1.3.2026'],
  ])('%s', (_, date) => {
    const table = tableOf(drive(() => date, 43_200));
    expect(table.epoch).toBe('2026-03-01T12:00:00.000Z');
    expect(table.issues).toEqual([]);
    expect(findStops(table)[0]!.clock).toMatch(/^2026-03-01T12:00:0[12]\.\d{3}Z$/);
  });

  test('over midnight, in the order that the days tell', () => {
    const table = tableOf(drive((s) => (s < 3 ? '13/12/2026' : '14/12/2026'), 86_397));
    expect(table.epoch).toBe('2026-12-13T23:59:57.000Z');
    expect(table.segmentStarts).toEqual([0]);
    expect(findStops(table)).toHaveLength(1);
  });

  test('a date that may be two is not guessed, and said', () => {
    const table = tableOf(drive(() => '03/04/2026', 43_200, 'Datum'));
    expect(table.epoch).toBeNull();
    expect(table.clock?.kind).toBe('time-of-day');
    expect(table.issues.find(({ code }) => code === 'date-not-read')?.message).toContain('03/04/2026');
  });

  test('a row without its date is skipped and said', () => {
    const table = tableOf(drive((s) => (s === 2 ? '' : '2026-03-01'), 43_200));
    expect(table.time).toHaveLength(madeDrive().length - 1);
    expect(table.issues).toMatchObject([{ code: 'row-without-time', line: 22, count: 1 }]);
  });
});

describe('local clocks', () => {
  /** The made drive with the clock put forward or back by an hour in the middle of its stop. */
  const shifted = (by: number, zone: (seconds: number) => string = () => ''): string =>
    madeCsv({
      header: ['Time', 'Speed [km/h]', 'n'],
      time: (s) => `2026-03-29 ${clock(s, 7197 + (s >= 4 ? by : 0))}${zone(s)}`,
    });

  test.each([
    ['forward', 3600],
    ['back', -3600],
  ])('an hour %s is said, and no stop is measured across it', (way, by) => {
    const table = tableOf(shifted(by));
    expect(table.segmentStarts).toEqual([0, 40]);
    expect(table.issues).toMatchObject([{ code: 'clock-hour-jump', count: 1 }]);
    expect(table.issues[0]!.message).toContain(way);
    expect(findStops(table)).toEqual([]);
  });

  test('with its zone in every row the clock does not jump', () => {
    const table = tableOf(shifted(3600, (s) => (s >= 4 ? '+02:00' : '+01:00')));
    expect(table.segmentStarts).toEqual([0]);
    expect(table.issues).toEqual([]);
    expect(findStops(table)).toHaveLength(1);
  });

  test('other jumps are said with their size and moment', () => {
    const table = tableOf(shifted(-100));
    expect(table.issues).toMatchObject([{ code: 'clock-jump-back' }]);
    expect(table.issues[0]!.message).toContain('99.9 s');
    expect(findStops(table)).toEqual([]);
  });
});

describe('refused in one sentence', () => {
  test.each([
    ['', 'log-empty'],
    [' \r\n \n', 'log-empty'],
    ['speed [km/h],n\n1,2\n2,3\n', 'log-no-time'],
    ['time [s],n\n1,2\n2,3\n', 'log-no-speed'],
    ['time [s],speed [km/h]\n1,2\n', 'log-one-sample'],
    ['time [s],speed [km/h]\n', 'log-not-a-table'],
    ['just a letter to somebody\nwith a second line\n', 'log-not-a-table'],
    ['1,2,3\n2,3,4\n3,4,5\n', 'log-no-time'],
    ['time,speed [km/h]\n07:61:00,2\n07:62:00,3\n', 'log-no-rows'],
    ['time [s],speed [km/h]\n3,2\n2,3\n1,4\n0,5\n', 'log-time-backwards'],
    ['time,speed [km/h]\n07:00:03,2\n07:00:02,3\n07:00:01,4\n', 'log-time-backwards'],
    ['time [s],speed [warp]\n0,2\n1,3\n', 'log-unknown-unit'],
    ['time [s],speed\n0,2\n1,3\n', 'log-speed-without-unit'],
  ])('%j', (text, code) => {
    const found = refusal(text);
    expect(found.code).toBe(code);
    expect(found.sentence).toMatch(/^made\.csv .{10,}\.$/);
    expect(found.sentence).not.toContain('\n');
    expect(found.sentence, 'what to do').toMatch(
      /; (say|sort|export|it|cut)|so log|Say which|say it:|export the log/,
    );
  });
});
