import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { repeatedStops } from './repeated-stops.ts';

const row = {
  setUp: exampleSetUp,
  road: exampleRoad,
  foot: { force: 130, rampTime: 0.2 },
  speed: 40,
  count: 10,
  interval: 40,
};

describe('a row of stops', () => {
  it('gets hotter from stop to stop, by less each time, and fades', () => {
    const stops = repeatedStops(row);
    const starts = stops.map(({ bulkAtStart }) => bulkAtStart.front);
    expect(stops.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(starts).toEqual(starts.toSorted((first, second) => first - second));
    expect(starts[9]! - starts[8]!).toBeLessThan(starts[1]! - starts[0]!);
    expect(stops[0]!.shareOfFirst).toBe(1);
    expect(stops[9]!.shareOfFirst).toBeLessThan(0.97);
  });

  it('starts each stop as warm as the cooling leaves it: cooler with more time between', () => {
    const last = (interval: number) => repeatedStops({ ...row, interval }).at(-1)!.bulkAtStart.front;
    expect(last(120)).toBeLessThan(last(40));
    expect(last(40)).toBeLessThan(last(20));
  });

  it('goes back to the air after a very long wait', () => {
    const stops = repeatedStops({
      ...row,
      count: 2,
      interval: 3600,
      rotorTemperatures: { front: 300, rear: 300 },
    });
    expect(stops[1]!.bulkAtStart.front).toBeCloseTo(20, 0);
    expect(stops[1]!.bulkAtStart.rear).toBeCloseTo(20, 0);
  });

  it('has a fluid that follows the pads slowly, and is hottest once the car stands', () => {
    const stops = repeatedStops(row);
    const fluid = stops.map((one) => one.fluid.front);
    expect(stops[9]!.pads.front).toBeGreaterThan(stops[0]!.pads.front);
    expect(fluid[9]).toBe(Math.max(...fluid));
    expect(fluid[9]).toBeLessThan(stops[9]!.pads.front);
  });

  it('books in each stop what pads and rotors took, though their shares change', () => {
    for (const { stop } of repeatedStops(row)) {
      const { kineticIn, ...out } = stop.energies;
      const sum = Object.values(out).reduce((total, energy) => total + energy, 0);
      expect(Math.abs(sum - kineticIn)).toBeLessThan(1e-4 * kineticIn);
      expect(stop.energies.pads).toBeGreaterThan(0.003 * kineticIn);
      expect(stop.energies.pads).toBeLessThan(0.04 * kineticIn);
    }
  });

  it('regains its speed faster and cools more where it may accelerate harder', () => {
    const last = (regain: number) => repeatedStops({ ...row, regain }).at(-1)!.bulkAtStart.front;
    expect(last(6)).toBeLessThan(last(1.2));
  });

  it('ends with a stop that does not come to rest', () => {
    const road = { ...exampleRoad, grade: -0.25 };
    expect(repeatedStops({ ...row, road, foot: { force: 20, rampTime: 0.1 }, speed: 10 })).toHaveLength(1);
  });
});
