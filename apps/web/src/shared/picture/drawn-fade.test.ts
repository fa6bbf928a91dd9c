import type { FadeSetResult } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { measure } from '../units/measure.ts';
import { drawnFade } from './drawn-fade.ts';

const us = {
  distance: measure('stopping-distance', { system: 'us' }),
  temperature: measure('temperature', { system: 'us' }),
};
const stop = (number: number, distance_m: number, counted = true, start_C?: number) => ({
  number,
  log: 'a.csv',
  start_s: number * 60,
  distance_m,
  distanceStandardError_m: 0.3,
  restedFor_s: null,
  temperatures: start_C === undefined ? [] : [{ channel: 'front rotor', start_C }],
  counted,
  reason: counted ? null : 'held up',
});
const set: FadeSetResult = {
  name: 'as found',
  stops: [stop(1, 40, true, 100), stop(2, 55, false, 150), stop(3, 42, true, 200), stop(4, 43)],
  slope_m_per_stop: { value: 1, low: 0.5, high: 1.5 },
  growth_m: null,
  growthPercent: null,
  bends: false,
  temperatures: [],
};

describe('stops in a row as drawn', () => {
  it('stand in the units of the person, temperatures with their own zero', () => {
    const { stops, channels } = drawnFade(set, 0, us);
    expect(stops.map(({ distance }) => Math.round(distance))).toEqual([131, 180, 138, 141]);
    expect(channels).toEqual([
      {
        channel: 'front rotor',
        points: [
          { number: 1, value: 212 },
          { number: 2, value: 302 },
          { number: 3, value: 392 },
        ],
      },
    ]);
  });

  it('have a line through the stops that count, and through them alone', () => {
    const [from, to] =
      drawnFade(set, 1, { ...us, distance: measure('stopping-distance', { system: 'metric' }) }).fit ?? [];
    // counted: (1, 40), (3, 42), (4, 43): middle 8/3, height 125/3
    expect(from).toEqual({ number: 1, distance: expect.closeTo(40, 9) as number });
    expect(to).toEqual({ number: 4, distance: expect.closeTo(43, 9) as number });
    expect(drawnFade({ ...set, slope_m_per_stop: null }, 0, us).fit).toBeNull();
  });
});
