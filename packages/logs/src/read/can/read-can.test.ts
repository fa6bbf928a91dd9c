import { describe, expect, test } from 'vitest';
import type { Channel, ChannelTable } from '../../channels/channel-table.ts';
import { findStops } from '../../stops/find-stops.ts';
import { bytesOf } from '../csv/made-csv.testing.ts';
import { madeCandump, madeDbc, madeEpoch, madeFrames, madeTrace } from '../made-logs.testing.ts';
import { madeDriveSpeed } from '../nmea/made-nmea.testing.ts';
import { readLog, type ReadOptions, type ReadOutcome } from '../read-log.ts';

function outcome(text: string, dbc = madeDbc, options: Partial<ReadOptions> = {}): ReadOutcome {
  return readLog(bytesOf(text), { name: 'made.log', signals: { name: 'made.dbc', text: dbc }, ...options });
}

function tableOf(text: string, dbc = madeDbc, options: Partial<ReadOptions> = {}): ChannelTable {
  const read = outcome(text, dbc, options);
  if (!read.ok) throw new Error(read.sentence);
  return read.table;
}

function channelOf(table: ChannelTable, name: string): Channel {
  const found = table.channels.find((channel) => channel.name === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
}

function known(table: ChannelTable, name: string): readonly number[] {
  return [...channelOf(table, name).values].filter((value) => !Number.isNaN(value));
}

function counts(table: ChannelTable): Record<string, number> {
  return Object.fromEntries(table.issues.map(({ code, count }) => [code, count]));
}

/** Two frames a second apart, so that a table comes of any payload. */
function two(first: string, second: string): string {
  return `(1.0) can0 ${first}\n(2.0) can0 ${second}\n`;
}

describe('a made drive', () => {
  test.each([
    ['candump', madeCandump()],
    ['a numbered trace', madeTrace()],
  ])('as %s', (_, text) => {
    const table = tableOf(text);
    expect(table.epoch).toBe('2026-03-01T12:00:00.000Z');
    expect(table.issues).toEqual([]);
    expect(table.time).toHaveLength(112);
    expect(table.headings).toBe(
      'SPEEDS.SPEED | SPEEDS.BRAKE_PRESSED | WHEELS.WHEEL_SPEED_L | WHEELS.WHEEL_SPEED_R | WHEELS.PAGE | WHEELS.TEMPERATURE',
    );
    const speed = channelOf(table, 'SPEEDS.SPEED');
    expect(speed).toMatchObject({
      quantity: 'speed',
      unitAsRead: 'km/h',
      unitOrigin: 'format',
      chosenBy: 'guess',
    });
    speed.values.forEach((value, i) => expect(value).toBeCloseTo(madeDriveSpeed(i / 10), 2));
    expect(channelOf(table, 'WHEELS.WHEEL_SPEED_L').quantity).toBe('wheel-speed');
    const [stop] = findStops(table);
    expect(stop).toMatchObject({ startBy: 'brake-switch' });
    // 40 m, and 20 m/s for half of the 0.1 s between the last frame without and the first with the brake.
    expect(stop!.applicationDistance).toBeCloseTo(41, 1);
  });

  test('a multiplexed signal is there on its page alone, with its sign and unit', () => {
    const table = tableOf(madeCandump());
    const { values, quantity } = channelOf(table, 'WHEELS.TEMPERATURE');
    expect(quantity).toBe('temperature');
    values.forEach((value, i) => (i % 2 === 1 ? expect(value).toBe(100) : expect(value).toBeNaN()));
  });

  test('messages at rates of their own share one time base with gaps between', () => {
    const lines = Array.from({ length: 100 }, (_, i) => [
      `(${(10 + i / 50).toFixed(3)}) can0 0B0#0E100000`,
      ...(i % 5 === 0 ? [`(${(10.001 + i / 50).toFixed(3)}) can0 18FF0100#0000000000000000`] : []),
    ]).flat();
    const table = tableOf(lines.join('\n'));
    expect(table.time).toHaveLength(120);
    expect(known(table, 'SPEEDS.SPEED')).toHaveLength(100);
    expect(known(table, 'WHEELS.WHEEL_SPEED_L')).toHaveLength(20);
    expect(table.epoch).toBeNull();
  });
});

describe('how a line is written', () => {
  test.each([
    ['as candump shows it', ' (1.0) can0  0B0   [4]  0E 10 00 00', ' (2.0) can0  0B0   [4]  0E 10 00 00'],
    [
      'with direction and ASCII',
      " (1.0) can0  RX - -  0B0   [4]  0E 10 00 00   '....'",
      " (2.0) can0  TX - -  0B0   [4]  0E 10 00 00   '....'",
    ],
    ['with points and a direction', '(1.0) can0 0B0#0E.10.00.00 R', '(2.0) can0 0B0#0e.10.00.00 T'],
    [
      'with a date',
      '(2026-03-01 12:00:01.000000) can0 0B0#0E100000',
      '(2026-03-01 12:00:02.000000) can0 0B0#0E100000',
    ],
  ])('%s', (_, first, second) => {
    const table = tableOf(`${first}\n${second}\n`);
    expect(table.time).toEqual(Float64Array.of(0, 1));
    expect(known(table, 'SPEEDS.SPEED')).toEqual([10, 10].map((speed) => expect.closeTo(speed, 9) as number));
  });

  test('remote, error, torn and strange lines are counted by kind', () => {
    const table = tableOf(
      [
        '(1.0) can0 0B0#0E100000',
        '(1.1) can0 0B0#R4',
        '(1.2) can0 20000004#0004000000000000',
        '(1.3) can0 0B0#0E1',
        '(1.4) can0 0B0#0E10',
        '(1.5) can0 0B0#0E1000000000000000',
        '(1.6) can0 8FF#00000000',
        'nonsense',
        '(2.0) can0 0B0#0E100000',
      ].join('\n'),
    );
    expect(counts(table)).toEqual({ 'frame-without-data': 3, 'not-a-frame': 3, 'frame-length': 1 });
    expect(known(table, 'SPEEDS.SPEED')).toHaveLength(2);
    expect(table.issues.find(({ code }) => code === 'frame-length')!.message).toContain("0B0 'SPEEDS'");
  });

  test.each([
    ['0B00E100000', false],
    ['0B0##10E100000', true],
    ['0B0##0E100000', false],
  ])('%s is read as a frame: %s', (frame, isRead) => {
    const read = outcome(two(frame, frame));
    expect(read.ok).toBe(isRead);
  });

  test('a flexible frame may be filled up to the next length that it can have, no further', () => {
    const dbc = 'BO_ 176 LONG: 10 X\n SG_ SPEED : 64|16@1+ (0.01,0) [0|0] "m/s" X\n';
    const filled = `0B0##1${'00'.repeat(8)}E803${'00'.repeat(2)}`;
    expect(known(tableOf(two(filled, filled), dbc), 'LONG.SPEED')).toEqual([10, 10]);
    const tooLong = `0B0##1${'00'.repeat(16)}`;
    expect(outcome(two(tooLong, tooLong), dbc)).toMatchObject({ ok: false, code: 'signals-not-in-log' });
  });
});

describe('times', () => {
  test('lines that come late are put where their time says', () => {
    const lines = madeCandump().split('\n');
    [lines[20], lines[21], lines[22], lines[23]] = [lines[22]!, lines[23]!, lines[20]!, lines[21]!];
    const table = tableOf(lines.join('\n'));
    expect(counts(table)).toEqual({ 'late-line': 1 });
    channelOf(table, 'SPEEDS.SPEED').values.forEach((value, i) =>
      expect(value).toBeCloseTo(madeDriveSpeed(i / 10), 2),
    );
  });

  test('a clock that is set back starts a new segment', () => {
    const first = madeCandump();
    const table = tableOf(`${first}\n${first}`);
    expect(table.segmentStarts).toEqual([0, 112]);
    expect(findStops(table)).toHaveLength(2);
  });

  test('two frames of one message at one time: the first counts', () => {
    const table = tableOf(`(1.0) can0 0B0#0E100000\n(1.0) can0 0B0#1C200000\n(2.0) can0 0B0#0E100000\n`);
    expect(known(table, 'SPEEDS.SPEED')).toHaveLength(2);
    expect(counts(table)).toEqual({ 'repeated-time': 1 });
  });

  test('steps from line to line are no moments', () => {
    const lines = Array.from(
      { length: 50 },
      (_, i) => `(000.${String(100_000 + ((i * 7919) % 9000))}) can0 0B0#0E100000`,
    );
    expect(outcome(lines.join('\n'))).toMatchObject({ ok: false, code: 'log-no-time' });
  });

  test('frames without times', () => {
    const read = outcome('  can0  0B0   [4]  0E 10 00 00\n  can0  0B0   [4]  0E 10 00 00\n');
    expect(read).toMatchObject({ ok: false, code: 'log-no-time' });
  });
});

describe('what a signal is', () => {
  const message = (...signals: readonly string[]): string =>
    ['BO_ 176 BODY: 8 X', ...signals.map((signal) => ` SG_ ${signal} X`)].join('\n');
  const frame = '0B0#0A00140005000100';
  const oneSpeed = 'SPEED : 0|16@1+ (1,0) [0|0] "km/h"';

  test.each([
    ['SPEED : 0|16@1+ (1,0) [0|0] "mph"', 'speed', 10 * 0.44704],
    ['SPEED : 0|16@1+ (1,0) [0|0] "kph"', 'speed', 10 / 3.6],
    ['V_SPEED : 0|16@1+ (1,0) [0|0] "m/s"', 'speed', 10],
    ['WHEEL_SPEED_FL : 0|16@1+ (1,0) [0|0] "km/h"', 'wheel-speed', 10 / 3.6],
  ])('%s', (signal, quantity, si) => {
    const table = tableOf(two(frame, frame), message(signal));
    expect(table.channels[0]).toMatchObject({ quantity });
    expect(table.channels[0]!.values[0]).toBeCloseTo(si, 12);
  });

  test.each([
    ['LONG_ACCEL : 0|16@1+ (1,0) [0|0] "m/s2"', 'acceleration-forward', 10],
    ['BRAKE_PRESSURE : 0|16@1+ (1,0) [0|0] "bar"', 'brake-pressure', 1e6],
    ['BRAKE_PEDAL : 0|16@1+ (1,0) [0|0] ""', 'brake-pressure', 10],
    ['BRAKE_SWITCH : 48|1@1+ (1,0) [0|0] ""', 'brake-switch', 1],
    ['BRAKE_STATUS : 48|2@1+ (1,0) [0|0] ""', 'unknown', 1],
    ['BRAKE_HOLD_ACTIVE : 48|1@1+ (1,0) [0|0] ""', 'unknown', 1],
    ['HUD_SPEED : 0|16@1+ (1,0) [0|0] "km/h"', 'unknown', 10],
    ['ENGINE_SPEED : 0|16@1+ (1,0) [0|0] "rpm"', 'unknown', 10],
    ['STEER_ANGLE : 0|16@1+ (1,0) [0|0] "deg"', 'unknown', 10],
    ['OIL_TEMP : 0|16@1+ (1,0) [0|0] "degF"', 'temperature', (10 - 32) / 1.8],
  ])('%s beside a speed', (signal, quantity, si) => {
    const table = tableOf(two(frame, frame), message(oneSpeed.replace('0|16', '16|16'), signal));
    expect(table.channels[1]).toMatchObject({ quantity });
    expect(table.channels[1]!.values[0]).toBeCloseTo(si, 9);
  });

  test("a message's name helps where the unit fits it", () => {
    const dbc =
      'BO_ 176 WHEEL_SPEEDS: 8 X\n SG_ FL : 0|16@1+ (1,0) [0|0] "km/h" X\n SG_ COUNT : 16|16@1+ (1,0) [0|0] "" X\n';
    const table = tableOf(two(frame, frame), dbc);
    expect(table.channels.map(({ quantity }) => quantity)).toEqual(
      ['unknown', 'unknown'].with(0, 'wheel-speed'),
    );
  });

  test('a speed without a unit is asked for, given, or left aside beside one that has a unit', () => {
    const bare = 'SPEED : 0|16@1+ (1,0) [0|0] ""';
    expect(outcome(two(frame, frame), message(bare))).toMatchObject({
      ok: false,
      code: 'log-speed-without-unit',
    });
    const strange = 'SPEED : 0|16@1+ (1,0) [0|0] "furlongs"';
    expect(outcome(two(frame, frame), message(strange))).toMatchObject({
      ok: false,
      code: 'log-unknown-unit',
    });
    const scaled = tableOf(two(frame, frame), message(bare), { speedScale: 0.5 });
    expect(scaled.channels[0]).toMatchObject({ quantity: 'speed', unitOrigin: 'given' });
    expect(scaled.channels[0]!.values[0]).toBe(5);
    const beside = tableOf(two(frame, frame), message(bare, 'OTHER_SPEED : 16|16@1+ (1,0) [0|0] "km/h"'));
    expect(beside.channels.map(({ quantity }) => quantity)).toEqual(['unknown', 'speed']);
    expect(counts(beside)).toEqual({ 'unit-missing': 1 });
  });

  test("a person's word overrules the guess", () => {
    const table = tableOf(
      two(frame, frame),
      message('X1 : 0|16@1+ (1,0) [0|0] ""', 'SPEED : 16|16@1+ (1,0) [0|0] "km/h"'),
      {
        columns: { speed: { name: 'BODY.X1', unit: 'mph', assumed: true } },
      },
    );
    expect(table.channels[0]).toMatchObject({ quantity: 'speed', unitOrigin: 'assumed', chosenBy: 'person' });
    expect(table.channels[0]!.values[0]).toBeCloseTo(4.4704, 12);
    expect(table.channels[1]).toMatchObject({ quantity: 'unknown' });
    const wrong = outcome(two(frame, frame), message(oneSpeed), {
      columns: { speed: { name: 'NONE', unit: 'km/h' } },
    });
    expect(wrong).toMatchObject({ ok: false, code: 'log-no-column' });
    const odd = outcome(two(frame, frame), message(oneSpeed), {
      columns: { speed: { name: 'BODY.SPEED', unit: 'bar' } },
    });
    expect(odd).toMatchObject({ ok: false, code: 'log-unknown-unit' });
  });

  test('what leaves the stated range is a gap where it would be used', () => {
    const table = tableOf(
      two('0B0#0A00140005000100', '0B0#FFFF140005000100'),
      message('SPEED : 0|16@1+ (1,0) [0|250] "km/h"', 'COUNT : 16|16@1+ (1,0) [0|3] ""'),
    );
    expect(known(table, 'BODY.SPEED')).toHaveLength(1);
    expect(known(table, 'BODY.COUNT')).toEqual([20, 20]);
    expect(counts(table)).toEqual({ 'out-of-stated-range': 1 });
  });
});

describe('refused in one sentence', () => {
  test('without a description, with the frames that it holds', () => {
    const read = readLog(bytesOf(madeCandump()), { name: 'made.log' });
    expect(read).toMatchObject({ ok: false, code: 'log-needs-signals' });
    expect(read.ok ? '' : read.sentence).toMatch(/^made\.log is .*DBC file.* frames 0B0, 18FF0100\.$/);
  });

  test.each([
    ['BO_ 999 OTHER: 8 X\n SG_ SPEED : 0|16@1+ (1,0) [0|0] "km/h" X', 'signals-not-in-log'],
    ['BO_ 176 NOTHING: 4 X\n SG_ COUNT : 0|16@1+ (1,0) [0|0] "" X', 'log-no-speed'],
    ['no description at all', 'signals-not-read'],
  ])('%j', (dbc, code) => expect(outcome(madeCandump(), dbc)).toMatchObject({ ok: false, code }));

  test('one moment', () => {
    expect(outcome('(1.0) can0 0B0#0E100000')).toMatchObject({ ok: false, code: 'log-one-sample' });
  });

  test('a trace of another version', () => {
    const read = outcome(madeTrace().replace('1.1', '1.3'));
    expect(read).toMatchObject({ ok: false, code: 'log-not-read' });
  });
});

test('the made frames say what they should', () => {
  expect(madeFrames(3)[0]).toEqual({ id: '0B0', data: [0x1c, 0x20, 1, 0] });
  expect(new Date(madeEpoch * 1000).toISOString()).toBe('2026-03-01T12:00:00.000Z');
});
