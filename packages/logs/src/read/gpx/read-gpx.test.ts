import { describe, expect, test } from 'vitest';
import type { ChannelTable } from '../../channels/channel-table.ts';
import { findStops } from '../../stops/find-stops.ts';
import { bytesOf } from '../csv/made-csv.testing.ts';
import { gpxAround, madeGpx, trackPoint } from '../made-logs.testing.ts';
import { madeDriveSpeed } from '../nmea/made-nmea.testing.ts';
import { readLog, type ReadOptions, type ReadOutcome } from '../read-log.ts';

function outcome(text: string, options: Partial<ReadOptions> = {}): ReadOutcome {
  return readLog(bytesOf(text), { name: 'made.gpx', ...options });
}

function tableOf(text: string, options: Partial<ReadOptions> = {}): ChannelTable {
  const read = outcome(text, options);
  if (!read.ok) throw new Error(read.sentence);
  return read.table;
}

function counts(table: ChannelTable): Record<string, number> {
  return Object.fromEntries(table.issues.map(({ code, count }) => [code, count]));
}

function valuesOf(table: ChannelTable, quantity: string): Float64Array {
  return table.channels.find((channel) => channel.quantity === quantity)!.values;
}

/** Points of the made drive, each `step` apart. */
function points(step: number, inner: (t: number) => string = () => '', from = 0): string {
  return Array.from({ length: Math.round(11 / step) }, (_, i) => i * step)
    .map((t) => trackPoint(from + t, inner(t)).replace(/lat="[^"]*"/, /lat="[^"]*"/.exec(trackPoint(t))![0]))
    .join('\n');
}

describe('a made drive with speeds', () => {
  const plain = madeGpx();
  const custom = madeGpx(
    (v) =>
      `<extensions><q:TrackPointExtension><q:speed>${v.toFixed(3)}</q:speed></q:TrackPointExtension></extensions>`,
  );

  test.each([
    ['as it stands', plain],
    ['with a byte order mark', `\uFEFF${plain}`],
    ['with CR LF', plain.replaceAll('\n', '\r\n')],
    ['in one single line', plain.replaceAll('\n', '')],
    ['without a namespace', plain.replace(/ xmlns="[^"]*"/, '')],
    ['with a prefix to every element', plain.replace(/<(\/?)(?!\?)(\w)/g, '<$1g:$2')],
    [
      'in capitals of time zones',
      plain.replace(
        /T(\d\d):(\S+?)\.(\d+)Z/g,
        (_, h: string, rest: string, ms: string) =>
          `T${String(Number(h) + 2).padStart(2, '0')}:${rest}.${ms}+02:00`,
      ),
    ],
    [
      'with comments and CDATA',
      plain
        .replace('<trkseg>', '<!-- <trkpt> --><trkseg>')
        .replace('<speed>20.000</speed>', '<speed><![CDATA[20.000]]></speed>'),
    ],
  ])('%s', (_, text) => {
    const table = tableOf(text);
    expect(table).toMatchObject({ epoch: '2026-03-01T12:00:00.000Z', segmentStarts: [0], issues: [] });
    expect(table.channels.map(({ quantity }) => quantity)).toEqual([
      'speed',
      'latitude',
      'longitude',
      'altitude',
    ]);
    valuesOf(table, 'speed').forEach((v, i) => expect(v).toBeCloseTo(madeDriveSpeed(i / 10), 3));
    expect(valuesOf(table, 'latitude')[0]).toBeCloseTo((48 * Math.PI) / 180, 9);
    const [stop] = findStops(table);
    expect(Math.abs(stop!.applicationDistance - 40)).toBeLessThan(2 * stop!.distanceStandardError);
  });

  test('a speed in an extension is in m/s by custom, which is said and marked', () => {
    const table = tableOf(custom);
    expect(counts(table)).toEqual({ 'unit-assumed': 1 });
    expect(table.channels[0]).toMatchObject({ quantity: 'speed', unitOrigin: 'assumed', chosenBy: 'format' });
    expect(findStops(table)[0]!.flags.map(({ code }) => code)).toContain('scale-assumed');
  });

  test('one in km/h contradicts the positions and is not used', () => {
    const table = tableOf(madeGpx((v) => `<extensions><speed>${(v * 3.6).toFixed(3)}</speed></extensions>`));
    expect(counts(table)).toEqual({ 'speed-against-positions': 1, 'speed-from-positions': 1 });
    expect(table.issues[0]!.message).toContain('3.60 times');
    expect(findStops(table)[0]!.entrySpeed).toBeCloseTo(20, 0);
  });

  test("a person's word gives it its unit", () => {
    const text = madeGpx((v) => `<extensions><speed>${(v * 3.6).toFixed(3)}</speed></extensions>`);
    const table = tableOf(text, { columns: { speed: { name: 'speed (extension)', unit: 'km/h' } } });
    expect(counts(table)).toEqual({});
    expect(findStops(table)[0]!.entrySpeed).toBeCloseTo(20, 1);
  });

  test('course, satellites and dilution are kept', () => {
    const inner = (): string => '<course>90</course><sat>9</sat><hdop>0.8</hdop><speed>20</speed>';
    const table = tableOf(gpxAround(points(0.1, inner)));
    expect(valuesOf(table, 'heading')[3]).toBeCloseTo(Math.PI / 2, 12);
    expect(table.channels.slice(-2).map(({ name, values }) => [name, values[0]])).toEqual([
      ['satellites', 9],
      ['horizontal dilution', 0.8],
    ]);
  });
});

describe('speed from positions', () => {
  test.each([[0.1], [0.2], [1]])('points %d s apart give it, and it is said', (step) => {
    const table = tableOf(gpxAround(points(step)));
    expect(counts(table)).toEqual({ 'speed-from-positions': 1 });
    expect(table.channels[0]).toMatchObject({ name: 'speed from positions', unitOrigin: 'format' });
    const reach = Math.max(step, 0.2);
    table.time.forEach((t, i) => {
      const v = table.channels[0]!.values[i]!;
      const isInside = t > reach - 0.01 && t < table.time.at(-1)! - reach + 0.01;
      if (!isInside) expect(v).toBeNaN();
      else if (Math.abs(t - 3) > reach && Math.abs(t - 7) > reach)
        expect(v).toBeCloseTo(madeDriveSpeed(t), 2);
    });
    const [stop, ...others] = findStops(table, { minimumEntrySpeed: 3, gentleBelow: 0.5 });
    expect(others).toEqual([]);
    // A step of a second stretches the stop by about what the car drives in it: no distance to count.
    const stretched = stop!.flags.filter(
      ({ severity, reason }) => severity === 'excludes' && /stretches/.test(reason),
    );
    expect(stretched).toHaveLength(step > 0.1 ? 1 : 0);
  });

  test.each([[2], [5]])('points %d s apart give none', (step) => {
    const read = outcome(gpxAround(points(step)));
    expect(read).toMatchObject({ ok: false, code: 'log-too-sparse' });
    expect(read.ok ? '' : read.sentence).toContain(`every ${step.toFixed(1)} s`);
  });

  test('bursts of points between long silence are no dense record', () => {
    const bursts = [0, 60, 120, 180].map((from) => points(2.2, () => '', from)).join('\n');
    expect(outcome(gpxAround(bursts))).toMatchObject({ ok: false, code: 'log-too-sparse' });
  });

  test('a jump of the position gives no speed', () => {
    const text = gpxAround(points(1).replace(/lat="48\.0006/, 'lat="48.9006'));
    const table = tableOf(text);
    expect(counts(table)).toMatchObject({ 'position-jump': 2 });
    for (const v of table.channels[0]!.values) expect(Number.isNaN(v) || v < 21).toBe(true);
  });

  test('nothing is computed from one segment to the next', () => {
    const [first, second] = [points(0.1), points(0.1, () => '', 11)];
    const table = tableOf(gpxAround(`${first}</trkseg><trkseg/><trkseg>${second}`));
    expect(table.segmentStarts).toEqual([0, 110]);
    const speed = table.channels[0]!.values;
    expect([108, 109, 110, 111].map((row) => Number.isNaN(speed[row]!))).toEqual([true, true, true, true]);
    expect(counts(table)).toEqual({ 'speed-from-positions': 1 });
  });
});

describe('times', () => {
  test('several tracks, the later recorded first', () => {
    const speeds = (t: number): string => `<speed>${madeDriveSpeed(t).toFixed(3)}</speed>`;
    const text = gpxAround(`${points(0.1, speeds, 100)}</trkseg></trk><trk><trkseg>${points(0.1, speeds)}`);
    const table = tableOf(text);
    expect(table.segmentStarts).toEqual([0, 110]);
    expect(counts(table)).toEqual({ 'clock-jump-back': 1 });
    expect(findStops(table).map(({ clock }) => clock!.slice(11, 17))).toEqual(['12:01:', '12:00:']);
  });

  test('repeated and missing times are counted by line, double points skipped', () => {
    const lines = madeGpx().split('\n');
    lines.splice(8, 0, lines[7]!);
    lines[20] = lines[20]!.replace(/<time>.*<\/time>/, '');
    lines[21] = lines[21]!.replace(/<time>[^<]*/, '<time>2026-13-01T99:00:00Z');
    const table = tableOf(lines.join('\n'));
    expect(table.issues).toMatchObject([
      { code: 'repeated-time', count: 1, line: 9 },
      { code: 'row-without-time', count: 2, line: 21 },
    ]);
    expect(table.time).toHaveLength(110);
  });
});

describe('what is broken', () => {
  const whole = madeGpx();

  test('a truncated file keeps the points before the tear and says where it broke', () => {
    const at = whole.indexOf('<trkpt', whole.length / 2) + 17;
    const table = tableOf(whole.slice(0, at));
    expect(counts(table)).toEqual({ 'file-torn': 1 });
    expect(table.issues[0]!.message).toMatch(/at line \d+, column 17; the \d+ points before are read/);
    expect(table.time.length).toBeGreaterThan(40);
    expect(table.time.length).toBeLessThan(70);
  });

  test.each([
    ['a tag that is closed by another', whole.replace('</ele>', '</eel>')],
    ['an attribute without quotes', whole.replace('lon="11.0"', 'lon=11.0')],
    ['a stray ampersand', whole.replace('<ele>500', '<ele>&500')],
    [
      'entities that unfold',
      whole
        .replace('<gpx', '<!DOCTYPE g [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;">]>\n<gpx')
        .replace('<ele>500', '<ele>&b;'),
    ],
    ['two files in one', whole + whole],
    ['with elements within each other a million deep', whole.replace('<ele>', '<a>'.repeat(1e6))],
  ])('%s is refused with line and column', (_, text) => {
    const read = outcome(text);
    expect(read).toMatchObject({ ok: false, code: 'log-broken-xml' });
    expect(read.ok ? '' : read.sentence).toMatch(/^made\.gpx breaks .* line \d+, column \d+; .*\.$/);
  });

  test.each([
    ['a latitude beyond the pole', 'lat="98.1"'],
    ['a latitude that is a word', 'lat="48,1"'],
  ])('%s is a gap', (_, attribute) => {
    const table = tableOf(whole.replace(/lat="[^"]*"/, attribute));
    expect(valuesOf(table, 'latitude')[0]).toBeNaN();
    expect(valuesOf(table, 'speed')[0]).toBe(20);
  });

  test('a speed that is a word is a gap', () => {
    expect(valuesOf(tableOf(whole.replace('<speed>20.000', '<speed>fast')), 'speed')[0]).toBeNaN();
  });

  test.each([
    [gpxAround(points(0.1).replace(/<time>.*?<\/time>/g, '')), 'log-no-time'],
    [gpxAround(''), 'log-no-rows'],
    [
      gpxAround('').replace('<trk>', '<wpt lat="1" lon="2"><time>2026-03-01T12:00:00Z</time></wpt><trk>'),
      'log-no-rows',
    ],
    [gpxAround(trackPoint(1)), 'log-one-sample'],
    [gpxAround(points(0.1).replaceAll(/lat="[^"]*"/g, '')), 'log-no-speed'],
  ])('%#', (text, code) => {
    const read = outcome(text);
    expect(read).toMatchObject({ ok: false, code });
    if (!read.ok) expect(read.sentence).toMatch(/^made\.gpx [^\n]{15,}\.$/);
  });
});
