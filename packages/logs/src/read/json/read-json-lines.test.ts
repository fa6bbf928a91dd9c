import { describe, expect, test } from 'vitest';
import type { ChannelTable } from '../../channels/channel-table.ts';
import { findStops } from '../../stops/find-stops.ts';
import { bytesOf } from '../csv/made-csv.testing.ts';
import { madeJson } from '../made-logs.testing.ts';
import { madeDriveSpeed } from '../nmea/made-nmea.testing.ts';
import { readLog, type ReadOptions, type ReadOutcome } from '../read-log.ts';

function outcome(text: string, options: Partial<ReadOptions> = {}): ReadOutcome {
  return readLog(bytesOf(text), { name: 'made.json', ...options });
}

function tableOf(text: string, options: Partial<ReadOptions> = {}): ChannelTable {
  const read = outcome(text, options);
  if (!read.ok) throw new Error(read.sentence);
  return read.table;
}

function counts(table: ChannelTable): Record<string, number> {
  return Object.fromEntries(table.issues.map(({ code, count }) => [code, count]));
}

function speeds(name: string, unitless = false): string {
  return [0, 1, 2, 3]
    .map((t) => JSON.stringify({ name, value: unitless ? t : 10, timestamp: 1_772_366_400 + t / 10 }))
    .join('\n');
}

describe('JSON, one object a line', () => {
  test('a made drive, its unit assumed and said', () => {
    const table = tableOf(madeJson());
    expect(counts(table)).toEqual({ 'unit-assumed': 1, 'not-a-number': 112 });
    expect(table.epoch).toBe('2026-03-01T12:00:00.000Z');
    const speed = table.channels.find(({ quantity }) => quantity === 'speed')!;
    expect(speed).toMatchObject({ name: 'vehicle_speed', unitAsRead: 'km/h', unitOrigin: 'assumed' });
    expect(table.time).toHaveLength(112);
    speed.values.forEach((v, i) => expect(v).toBeCloseTo(madeDriveSpeed(i / 10), 3));
    const [stop] = findStops(table);
    expect(stop).toMatchObject({ startBy: 'brake-switch' });
    expect(stop!.flags.map(({ code }) => code)).toContain('scale-assumed');
  });

  test('times that go backward are counted, and each value is put where its time says', () => {
    const lines = madeJson().split('\n');
    [lines[30], lines[33]] = [lines[33]!, lines[30]!];
    const table = tableOf(lines.join('\n'));
    expect(counts(table)['late-line']).toBe(2);
    table.channels[0]!.values.forEach((v, i) => expect(v).toBeCloseTo(madeDriveSpeed(i / 10), 3));
  });

  test('milliseconds since 1970 are told from seconds', () => {
    const inMilliseconds = madeJson().replace(
      /"timestamp":([\d.]+)/g,
      (_, s: string) => `"timestamp":${Math.round(Number(s) * 1000)}`,
    );
    expect(tableOf(inMilliseconds).epoch).toBe('2026-03-01T12:00:00.000Z');
  });

  test('a unit in the name counts; a speed without one is asked for', () => {
    expect(tableOf(speeds('speed_kmh')).channels[0]).toMatchObject({
      quantity: 'speed',
      unitOrigin: 'header',
    });
    expect(tableOf(speeds('speed_kmh')).channels[0]!.values[0]).toBeCloseTo(10 / 3.6, 12);
    expect(outcome(speeds('speed'))).toMatchObject({ ok: false, code: 'log-speed-without-unit' });
    const told = tableOf(speeds('speed'), { columns: { speed: { name: 'speed', unit: 'mph' } } });
    expect(told.channels[0]!.values[0]).toBeCloseTo(4.4704, 12);
  });

  test('damage and objects of other kinds are counted', () => {
    const lines = madeJson().split('\n');
    lines[0] = '{"metadata":{"version":"made"}}';
    lines[6] = lines[6]!.slice(0, -3);
    lines[9] = '{"name":"vehicle_speed","value":[20],"timestamp":1772366400.3}';
    const table = tableOf(lines.join('\n'));
    expect(counts(table)).toMatchObject({ 'not-an-event': 2, 'not-json': 1 });
    const speed = table.channels.find(({ quantity }) => quantity === 'speed')!;
    expect(speed.values.filter((v) => !Number.isNaN(v))).toHaveLength(109);
  });

  test.each([
    ['{"a":1}\n{"a":2}\n', 'log-not-read'],
    ['[1,2]\n[3,4]\n', 'log-not-read'],
    [speeds('gear'), 'log-no-speed'],
    ['{"name":"speed_kmh","value":1,"timestamp":2}\n', 'log-one-sample'],
    ['{"name":"speed_kmh","value":null,"timestamp":2}\n', 'log-no-rows'],
  ])('%j is refused', (text, code) => expect(outcome(text)).toMatchObject({ ok: false, code }));
});
