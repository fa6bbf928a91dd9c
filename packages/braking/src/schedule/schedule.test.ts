import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { usualHeatPath } from '../set-up/heat-path.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { quickStop } from '../stop/quick-stop.ts';
import { bedIn } from './ready/bed-in.ts';
import { burnish } from './ready/burnish.ts';
import { coolDown } from './ready/cool-down.ts';
import { equalStops } from './ready/equal-stops.ts';
import { heatingSnubs } from './ready/heating-snubs.ts';
import { hotStops } from './ready/hot-stops.ts';
import { laps } from './ready/laps.ts';
import { mountainDescent } from './ready/mountain-descent.ts';
import { runSchedule } from './run-schedule.ts';
import type { ScheduleEvent } from './schedule-event.ts';
import { thermalHeadroom } from './thermal-headroom.ts';

const foot = { force: 300, rampTime: 0.2 };
const on = { setUp: exampleSetUp, road: exampleRoad };
const run = (events: readonly ScheduleEvent[], setUp: SetUp = exampleSetUp) =>
  runSchedule({ setUp, road: exampleRoad, events });

function withPistons(conductance: number): SetUp {
  const heatPath = { ...usualHeatPath, pistonConductance: conductance };
  return { ...exampleSetUp, frontBrake: { ...exampleSetUp.frontBrake, heatPath } };
}

describe('a schedule', () => {
  it('has as its first stop the quick stop, but for layers and the pads that share the heat', () => {
    const [stop] = run(equalStops({ count: 1, speed: 30, interval: 60, foot })).stops;
    const alone = quickStop({ ...on, foot, speed: 30 });
    expect(stop!.distance / alone.distance).toBeCloseTo(1, 3);
    expect((stop!.front.interfacePeak - 100) / (alone.front.peakInterface - 100)).toBeGreaterThan(0.96);
    expect((stop!.front.interfacePeak - 100) / (alone.front.peakInterface - 100)).toBeLessThan(1.04);
  });

  it('takes a held deceleration at its word', () => {
    const { stops } = run([{ kind: 'slow', from: 33, to: 16, deceleration: 3 }]);
    expect(stops[0]!.distance).toBeCloseTo((33 ** 2 - 16 ** 2) / 6, 9);
    expect(stops[0]!.time).toBeCloseTo(17 / 3, 9);
    expect(stops[0]!.meanDeceleration).toBeCloseTo(3, 9);
  });

  it('asks more pedal for the same deceleration when the pads have faded', () => {
    const outcome = run(laps([{ from: 55, to: 22, next: 22 }], 16));
    const [first, last] = [outcome.stops[0]!, outcome.stops.at(-1)!];
    expect(last.front.interfacePeak).toBeGreaterThan(600);
    expect(last.pedalForce).toBeGreaterThan(1.3 * first.pedalForce);
    expect(last.shareOfFirst).toBeCloseTo(first.pedalForce / last.pedalForce, 9);
  });

  it('says where a held deceleration is more than the tires have', () => {
    const hard = (deceleration: number) => run([{ kind: 'slow', from: 30, to: 0, deceleration }]).stops[0]!;
    expect(hard(5).isWithinReach).toBe(true);
    expect(hard(12).isWithinReach).toBe(false);
  });

  it('takes its time to regain speed, and says where an interval does not leave it', () => {
    const slow = run(equalStops({ count: 2, speed: 30, interval: 60, foot }));
    expect([slow.isHurried, slow.stops[1]!.startTime]).toEqual([false, expect.closeTo(60, 6)]);
    const hurried = run(equalStops({ count: 2, speed: 30, interval: 8, foot }));
    expect([hurried.isHurried, hurried.stops[1]!.startTime]).toEqual([true, expect.closeTo(8, 6)]);
  });

  it('ends with a stop that does not come to rest', () => {
    const road = { ...exampleRoad, grade: -0.25 };
    const events = equalStops({ count: 5, speed: 10, interval: 60, foot: { force: 20, rampTime: 0.1 } });
    const outcome = runSchedule({ setUp: exampleSetUp, road, events });
    expect([outcome.stops.length, outcome.isFinished]).toEqual([1, false]);
    expect(outcome.stops[0]!.distance).toBe(Infinity);
  });

  it('is written down over time, each node as late as the one before or later', () => {
    const { course, time, stops } = runSchedule({
      ...on,
      events: [
        ...equalStops({ count: 3, speed: 30, interval: 50, foot }),
        ...coolDown({ speed: 15, driving: 200, parked: 600 }),
      ],
      isRecorded: true,
    });
    expect(course!.time.every((at, i) => i === 0 || at >= course!.time[i - 1]!)).toBe(true);
    expect(course!.time.at(-1)).toBeCloseTo(time, 6);
    expect(course!.front.fluid).toHaveLength(course!.time.length);
    expect(Math.max(...course!.front.interface)).toBeCloseTo(
      Math.max(...stops.map(({ front }) => front.interfacePeak)),
      6,
    );
    expect(course!.rear.bulk.every(Number.isFinite)).toBe(true);
  });

  it('heats the fluid most when the car has been parked hot', () => {
    const hot = equalStops({ count: 12, speed: 40, interval: 40, foot });
    const driven = run(hot);
    const parked = run([...hot, { kind: 'parked', time: 900 }]);
    expect(parked.front.fluid).toBeGreaterThan(driven.front.fluid + 15);
    expect(parked.front.fluidTime).toBeGreaterThan(driven.time + 60);
  });

  it('keeps the fluid cooler behind phenolic pistons than behind steel, and behind steel than aluminum', () => {
    const hot: readonly ScheduleEvent[] = [
      ...equalStops({ count: 12, speed: 40, interval: 40, foot }),
      { kind: 'parked', time: 900 },
    ];
    const [phenolic, steel, aluminum] = [18, 1200, 3600].map(
      (each) => run(hot, withPistons(each)).front.fluid,
    );
    expect(phenolic).toBeLessThan(steel! - 5);
    expect(steel).toBeLessThan(aluminum!);
  });

  it('has convection hardly matter in a stop and greatly after it, as was published of a disc', () => {
    const still = { ...exampleRoad, airDensity: 0.1 };
    const events = equalStops({ count: 1, speed: 30, interval: 60, foot });
    const peak = (road: typeof exampleRoad) =>
      runSchedule({ setUp: exampleSetUp, road, events }).stops[0]!.front.interfacePeak;
    const after = (road: typeof exampleRoad) =>
      runSchedule({
        setUp: exampleSetUp,
        road,
        events: [...events, { kind: 'drive', speed: 25, time: 240 }],
        isRecorded: true,
      }).course!.front.bulk.at(-1)!;
    expect(Math.abs(peak(still) - peak(exampleRoad))).toBeLessThan(6);
    expect(after(still) - after(exampleRoad)).toBeGreaterThan(15);
  });
});

describe('ready schedules', () => {
  it('burnish as the rule has it: 200 stops, never more than 2 km apart, never begun hotter unless they are', () => {
    const { stops, isFinished } = run(burnish());
    expect([stops.length, isFinished]).toEqual([200, true]);
    expect(stops.every(({ meanDeceleration }) => Math.abs(meanDeceleration - 3) < 1e-9)).toBe(true);
    const gaps = stops.slice(1).map(({ startTime }, at) => startTime - stops[at]!.startTime);
    expect(Math.max(...gaps)).toBeLessThan(2000 / (80 / 3.6) + 30);
  });

  it('heat with snubs one every 45 s, from 80 % of the top speed where that is lower', () => {
    const { stops } = run(heatingSnubs({ topSpeed: 30 }));
    expect(stops).toHaveLength(15);
    expect([stops[0]!.from, stops[0]!.to]).toEqual([24, 12]);
    expect(stops.every(({ startTime }, at) => Math.abs(startTime - 45 * at) < 1e-6)).toBe(true);
  });

  it('stop hot after them, set against the cold stop', () => {
    const { stops } = run(hotStops({ topSpeed: 60, foot }));
    expect(stops).toHaveLength(18);
    expect(stops[0]!.shareOfFirst).toBe(1);
    expect(stops[1]!.front.bulkAtStart).toBeLessThan(66);
    expect(stops[17]!.front.bulkAtStart).toBeGreaterThan(250);
    expect(stops[17]!.shareOfFirst).toBeGreaterThan(0.6);
  });

  it('bed pads in hot and let them cool', () => {
    const outcome = runSchedule({ ...on, events: bedIn(), isRecorded: true });
    expect(outcome.front.interface).toBeGreaterThan(300);
    expect(outcome.course!.front.bulk.at(-1)).toBeLessThan(100);
  });

  it('come down a mountain hotter where the engine helps less', () => {
    const down = (brakeShare: number) =>
      run(mountainDescent({ drop: 900, grade: 0.1, speed: 14, brakeShare, foot })).front.bulk;
    expect(down(1)).toBeGreaterThan(down(0.5) + 50);
    expect(down(0)).toBeLessThan(130);
  });

  it('refuse what cannot be', () => {
    expect(() => run([])).toThrow('events');
    expect(() => laps([], 3)).toThrow('braking points');
    expect(() => mountainDescent({ drop: 500, grade: 0.6, speed: 14, brakeShare: 1, foot })).toThrow(
      'descent',
    );
    expect(() => run([{ kind: 'slow', from: 20, to: 30, deceleration: 3 }])).toThrow('speed after');
    expect(() => run([{ kind: 'parked', time: -1 }])).toThrow('parked time');
  });
});

describe('thermal headroom', () => {
  const row = { ...on, foot, speed: 40, interval: 40 };

  it('is less at a higher speed, and has an end only where something gets too hot', () => {
    expect(thermalHeadroom({ ...row, speed: 20 })).toEqual({ stops: 60, first: null, limit: NaN });
    const [fast, faster] = [50, 60].map((speed) => thermalHeadroom({ ...row, speed }));
    expect(fast!.first).toBe('front pads');
    expect(fast!.limit).toBe(530);
    expect(faster!.stops).toBeLessThanOrEqual(fast!.stops);
  });

  it('ends with the fluid where that is old and the pads stand anything', () => {
    const pad = { ...exampleSetUp.frontBrake.pad, frictionTemperatures: [20, 900], frictions: [0.4, 0.4] };
    const setUp = {
      ...withPistons(8000),
      fluid: { ...exampleSetUp.fluid, age: 3e8, wetBoilingPoint: 115, dryBoilingPoint: 160 },
    };
    const { first, limit } = thermalHeadroom({
      ...row,
      speed: 55,
      interval: 35,
      setUp: { ...setUp, frontBrake: { ...setUp.frontBrake, pad } },
    });
    expect(first).toBe('front fluid');
    expect(limit).toBeLessThan(115);
  });
});
