import { describe, expect, test } from 'vitest';
import type { FindOptions } from './find-options.ts';
import { findStops } from './find-stops.ts';
import type { FoundStop } from './found-stop.ts';
import { madeSpeed, madeTable, timesAt } from './made-table.testing.ts';

const time = timesAt(50, 12);
const speed = time.map(madeSpeed(27, 3, 8));
const rotor = time.map((t, i) => (i % 25 === 0 ? 80 + Math.max(0, t - 3) * 50 : NaN));

function stopWith(channels: Parameters<typeof madeTable>[1], options: FindOptions = {}): FoundStop {
  const [found] = findStops(madeTable(time, { speed, ...channels }), options);
  if (found === undefined) throw new Error('no stop was found');
  return found;
}

/** A stop of a log whose temperature channels have these names. */
function named(names: readonly string[], options: FindOptions): FoundStop {
  const table = madeTable(time, { speed, temperature: names.map(() => rotor) });
  const channels = table.channels.map((channel, index) =>
    index === 0 ? channel : { ...channel, name: names[index - 1]! },
  );
  return findStops({ ...table, channels }, options)[0]!;
}

describe('what else the log tells of a stop', () => {
  test('temperatures at the start and at rest, by channel', () => {
    const [found, ...others] = stopWith({ temperature: rotor }).temperatures;
    expect(others).toEqual([]);
    expect(found).toMatchObject({ channel: 'temperature 1', start: 80 });
    expect(found!.end).toBe(80 + 3.5 * 50);
  });

  test('a temperature from long before is none; one that ends early has no end', () => {
    const old = time.map((t) => (t < 0.9 ? 80 : NaN));
    expect(stopWith({ temperature: old }).temperatures).toEqual([]);
    const early = time.map((t) => (t < 4 ? 80 : NaN));
    expect(stopWith({ temperature: early }).temperatures).toMatchObject([{ start: 80, end: null }]);
  });

  test('pressure and pedal force over the fully developed part', () => {
    const pressed = (full: number): number[] => time.map((t) => (t < 3 ? 0 : t < 4 ? full / 2 : full));
    const found = stopWith({ 'brake-pressure': pressed(6e6), 'pedal-force': pressed(300) });
    // 0.8 v0 is reached 0.825 s after the start, 0.1 v0 after 3.1875 s: 9 of 119 rows still have half of it.
    expect(found.developedPressure).toBeCloseTo(6e6 * (1 - (0.5 * 9) / 118), -5);
    expect(found.developedPedalForce).toBeCloseTo(300 * (1 - (0.5 * 9) / 118), -1);
    expect(stopWith({}).developedPressure).toBeNull();
  });

  test('the heading at the start, across north', () => {
    const swinging = time.map((_, i) => (i % 2 === 0 ? 0.02 : 2 * Math.PI - 0.01));
    expect(stopWith({ heading: swinging }).heading).toBeCloseTo(0.005, 2);
    expect(stopWith({}).heading).toBeNull();
  });
});

describe('the brakes are to be warm, and not too warm', () => {
  const window = { low: 65, high: 100 };
  const flagOf = (stop: FoundStop): FoundStop['flags'][number] | undefined =>
    stop.flags.find(({ code }) => code === 'start-temperature');

  test('inside the window nothing is said', () => {
    expect(flagOf(named(['Rotor FL'], { startTemperature: window }))).toBeUndefined();
    expect(flagOf(named(['Rotor FL'], {}))).toBeUndefined();
  });

  test('outside the stop is left out, and the sentence says which channel', () => {
    expect(flagOf(named(['Rotor FL'], { startTemperature: { low: 100, high: 150 } }))).toEqual({
      code: 'start-temperature',
      severity: 'excludes',
      reason: 'Rotor FL read 80 °C at the start; 100 °C to 150 °C is wanted.',
    });
  });

  test('other temperatures are not taken for the brakes', () => {
    const found = named(['coolant', 'intake air'], { startTemperature: { low: 100, high: 150 } });
    expect(flagOf(found)).toMatchObject({ severity: 'warns' });
    expect(flagOf(stopWith({}, { startTemperature: window }))).toMatchObject({ severity: 'warns' });
    const mixed = named(['coolant', 'brake disc'], { startTemperature: { low: 100, high: 150 } });
    expect(flagOf(mixed)!.reason).toContain('brake disc');
  });

  test('a window that is none is refused', () => {
    expect(() => stopWith({}, { startTemperature: { low: 100, high: 50 } })).toThrow(
      'highest start temperature',
    );
  });
});
