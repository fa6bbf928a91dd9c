import { describe, expect, test } from 'vitest';
import type { Channel, ChannelQuantity, ChannelTable } from '../../channels/channel-table.ts';
import { withDoubts } from './with-doubts.ts';

type Made = readonly [name: string, quantity: ChannelQuantity, of: (t: number) => number];

function issuesOf(...channels: readonly Made[]): readonly (readonly [string, string])[] {
  const time = Float64Array.from({ length: 400 }, (_, i) => i / 10);
  const table: ChannelTable = {
    time,
    channels: channels.map(([name, quantity, of]): Channel => {
      const values = time.map(of);
      return { name, quantity, unitAsRead: '', unitOrigin: 'format', chosenBy: 'format', values };
    }),
    segmentStarts: [0],
    epoch: null,
    headings: null,
    source: { name: 'made', format: 'made', bytes: 0, rows: time.length },
    issues: [],
  };
  return withDoubts(table).issues.map(({ code, message }) => [code, message]);
}

const steady = (v: number) => () => v;

describe('speed against odometer', () => {
  const odometer =
    (share: number, wrap = Infinity) =>
    (t: number) =>
      (1000 + Math.floor(t * 20 * share * 10) / 10) % wrap;

  test.each([
    [1, null],
    [0.98, null],
    [0.94, '6.4 % more'],
    [1.1, '9.1 % less'],
  ])('an odometer that reads %d times the way', (share, said) => {
    const issues = issuesOf(['v', 'speed', steady(20)], ['odo', 'distance', odometer(share)]);
    if (said === null) expect(issues).toEqual([]);
    else expect(issues).toEqual([['speed-against-odometer', expect.stringContaining(said)]]);
  });

  test('one that starts again from zero', () => {
    const issues = issuesOf(['v', 'speed', steady(20)], ['odo', 'distance', odometer(0.9, 1200)]);
    expect(issues).toEqual([['speed-against-odometer', expect.stringContaining('11.1 % more')]]);
  });

  test('gaps in the speed are no way that was not driven', () => {
    const gappy = (t: number): number => (t > 10 && t < 20 ? NaN : 20);
    expect(issuesOf(['v', 'speed', gappy], ['odo', 'distance', odometer(1)])).toEqual([]);
  });

  test('a distance told for each row alone, and one too coarse, say nothing', () => {
    expect(issuesOf(['v', 'speed', steady(20)], ['d', 'distance', (t) => 2 + Math.sin(t * 9)])).toEqual([]);
    const coarse = (t: number): number => Math.floor((t * 15) / 100) * 100;
    expect(issuesOf(['v', 'speed', steady(20)], ['d', 'distance', coarse])).toEqual([]);
  });
});

describe('speed against positions', () => {
  const north = (v: number) => (t: number) => 0.8 + (v * t) / 6_371_008.8;
  const placed = (v: number): readonly Made[] => [
    ['lat', 'latitude', north(v)],
    ['lon', 'longitude', steady(0.2)],
  ];

  test.each([
    [20, null],
    [21.5, null],
    [20 * 3.6, '3.60 times'],
    [20 / 1.609, '0.62 times'],
    [20 * 1.151, '1.15 times'],
  ])('a car at 20 m/s whose log says %d', (v, said) => {
    const issues = issuesOf(['v', 'speed', steady(v)], ...placed(20));
    if (said === null) expect(issues).toEqual([]);
    else expect(issues).toEqual([['speed-against-positions', expect.stringContaining(said)]]);
  });
});

describe('speeds and wheels among themselves', () => {
  test('a second speed in another unit than stated is said', () => {
    const issues = issuesOf(['a', 'speed', steady(20)], ['b', 'speed', steady(20 / 1.609)]);
    expect(issues).toEqual([['speeds-disagree', expect.stringContaining("'b' is usually 0.62 times 'a'")]]);
    expect(issuesOf(['a', 'speed', steady(20)], ['b', 'speed', steady(21)])).toEqual([]);
  });

  test('a wheel in the air is said, a curve and one damaged value are not', () => {
    const wheel = (name: string, of: (t: number) => number): Made => [name, 'wheel-speed', of];
    const four = (odd: (t: number) => number): readonly Made[] => [
      wheel('a', steady(10)),
      wheel('b', steady(10)),
      wheel('c', steady(10.5)),
      wheel('d', odd),
    ];
    expect(issuesOf(...four(steady(9.6)))).toEqual([]);
    expect(issuesOf(...four((t) => (t === 5 ? 30 : 10)))).toEqual([]);
    expect(issuesOf(...four((t) => (t > 5 && t < 7 ? 20 : 10)))).toEqual([
      ['wheels-apart', expect.stringContaining('first at 5.1 s, by up to 36 km/h')],
    ]);
    expect(issuesOf(wheel('a', steady(20)), wheel('b', steady(0)))).toHaveLength(1);
  });
});
