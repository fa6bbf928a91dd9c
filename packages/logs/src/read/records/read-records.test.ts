import { describe, expect, test } from 'vitest';
import type { ChannelTable } from '../../channels/channel-table.ts';
import { findStops } from '../../stops/find-stops.ts';
import { bytesOf } from '../csv/made-csv.testing.ts';
import { madeRecords } from '../made-logs.testing.ts';
import { madeDriveSpeed } from '../nmea/made-nmea.testing.ts';
import { readLog, type ReadOptions, type ReadOutcome } from '../read-log.ts';

function outcome(text: string, options: Partial<ReadOptions> = {}): ReadOutcome {
  return readLog(bytesOf(text), { name: 'made.log', ...options });
}

function tableOf(text: string, options: Partial<ReadOptions> = {}): ChannelTable {
  const read = outcome(text, options);
  if (!read.ok) throw new Error(read.sentence);
  return read.table;
}

function known(table: ChannelTable, name: string): readonly number[] {
  return [...table.channels.find((channel) => channel.name === name)!.values].filter((v) => !Number.isNaN(v));
}

function counts(table: ChannelTable): Record<string, number> {
  return Object.fromEntries(table.issues.map(({ code, count }) => [code, count]));
}

describe('named records', () => {
  test('a made drive: speed and odometer agree, others are kept', () => {
    const table = tableOf(madeRecords());
    expect(table.issues).toEqual([]);
    expect(table.time).toHaveLength(336);
    known(table, 'GVVEHSP.speed').forEach((v, i) => expect(v).toBeCloseTo(madeDriveSpeed(i / 10), 4));
    expect(known(table, 'GVODO.distance').at(-1)).toBe(100);
    expect(known(table, 'GVGYRO.2')).toHaveLength(112);
    expect(table.channels.find(({ name }) => name === 'GVGYRO.2')).toMatchObject({ quantity: 'unknown' });
    const [stop] = findStops(table);
    expect(Math.abs(stop!.applicationDistance - 40)).toBeLessThan(2 * stop!.distanceStandardError);
  });

  test('commas and semicolons part fields alike', () => {
    expect(known(tableOf(madeRecords().replaceAll(';', ',')), 'GVVEHSP.speed')).toHaveLength(112);
    expect(known(tableOf(madeRecords().replaceAll(',', ';')), 'GVODO.distance')).toHaveLength(112);
  });

  test('a value without its bit in the mask is a gap, never a speed', () => {
    const table = tableOf(
      madeRecords().replaceAll('$GVVEHSP;1;', '$GVVEHSP;0;').replace('$GVVEHSP;0;', '$GVVEHSP;1;'),
    );
    expect(known(table, 'GVVEHSP.speed')).toEqual([20]);
    expect(counts(table)).toMatchObject({ 'void-fix': 111 });
  });

  test('position records: the mask says which fields are there', () => {
    const lines = [0, 1, 2].map((i) => `${i * 1000}$GVGPSP,3,48.${i},11.5,0\n${i * 1000}$GVGPSC,1,13.5,90,0`);
    const table = tableOf(lines.join('\n'));
    expect(known(table, 'GVGPSC.speed')).toEqual([13.5, 13.5, 13.5]);
    expect(known(table, 'GVGPSC.course')).toEqual([]);
    expect(known(table, 'GVGPSP.altitude')).toEqual([]);
    expect(known(table, 'GVGPSP.latitude')[1]).toBeCloseTo((48.1 * Math.PI) / 180, 12);
  });

  test('damage is counted by kind', () => {
    const lines = madeRecords().split('\n');
    lines[4] = 'half a li';
    lines[7] += ',9';
    lines[10] = lines[10]!.replace(/[\d.]+$/, '7x');
    const table = tableOf(lines.join('\n'));
    expect(counts(table)).toEqual({ 'not-a-record': 1, 'ragged-row': 1, 'not-a-number': 1 });
    expect(known(table, 'GVVEHSP.speed')).toHaveLength(109);
  });

  test("a person's word makes a numbered field a speed", () => {
    const lines = Array.from({ length: 40 }, (_, i) => `${i * 100}$MYREC,${36 - i / 2},1`);
    expect(outcome(lines.join('\n'))).toMatchObject({ ok: false, code: 'log-no-speed' });
    const table = tableOf(lines.join('\n'), { columns: { speed: { name: 'MYREC.1', unit: 'km/h' } } });
    expect(table.channels[0]!.values[0]).toBeCloseTo(10, 12);
  });
});
