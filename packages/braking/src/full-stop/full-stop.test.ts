import { describe, expect, it } from 'vitest';
import type { Antilock } from '../set-up/antilock.ts';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { onStickyTires } from '../stop/any-stop.testing.ts';
import { quickStop } from '../stop/quick-stop.ts';
import { withSetUp } from './any-full-stop.testing.ts';
import { fullStop, fullStopWorkspace } from './full-stop.ts';
import type { FullStopInput } from './full-stop-input.ts';
import { fullStopTrace, type FullStopTrace } from './full-stop-trace.ts';

const base: FullStopInput = {
  setUp: exampleSetUp,
  road: exampleRoad,
  foot: { kind: 'ramp', force: 300, rampTime: 0.2 },
  speed: 27.8,
};
const nothing: Antilock = { kind: 'none', electronicRearLimit: false };
const driven = withSetUp(base, { antilock: nothing });
const locked: FullStopInput = { ...driven, lockedWheels: true };
const gentle: FullStopInput = { ...driven, foot: { kind: 'ramp', force: 60, rampTime: 0.2 } };

/** The same car with so much rear brake that its rear wheels lock first. */
function rearHeavy(antilock: Antilock): SetUp {
  const { caliper } = exampleSetUp.rearBrake;
  const rearBrake = { ...exampleSetUp.rearBrake, caliper: { ...caliper, pistonDiameters: [0.054] } };
  return { ...exampleSetUp, rearBrake, rearValve: { kind: 'none' }, antilock };
}

function withCar(stop: FullStopInput, change: Partial<SetUp['car']>): FullStopInput {
  return withSetUp(stop, { car: { ...stop.setUp.car, ...change } });
}

/** Where a wheel stands, 0 to 3, while the car is faster than `speed`, m/s. */
function standingAbove({ wheelSpeed, speed }: FullStopTrace, limit: number): readonly number[] {
  return [0, 1, 2, 3].filter((wheel) =>
    wheelSpeed[wheel]!.some((turning, node) => turning <= 0 && speed[node]! > limit),
  );
}

describe('the foot of a full stop', () => {
  it('stops the car sooner the harder and the faster it presses, while the brakes decide', () => {
    const distance = (force: number, rampTime: number): number =>
      fullStop({ ...gentle, foot: { kind: 'ramp', force, rampTime } }).distance;
    expect(distance(70, 0.2)).toBeLessThan(distance(60, 0.2));
    expect(distance(60, 0.2)).toBeLessThan(distance(60, 0.5));
    expect(fullStop(gentle).limitedBy).toBe('brake torque');
  });

  it('as a recorded trace of a ramp is that ramp', () => {
    const trace = { kind: 'trace', times: [0, 0.2, 3], forces: [0, 60, 60] } as const;
    expect(fullStop({ ...gentle, foot: trace }).distance / fullStop(gentle).distance).toBeCloseTo(1, 4);
  });

  it('as a trace that lets go lets the car roll on', () => {
    const trace = { kind: 'trace', times: [0, 0.2, 1, 1.2], forces: [0, 60, 60, 0] } as const;
    const stop = fullStopTrace({ ...gentle, foot: trace });
    expect(stop.summary.distance).toBeGreaterThan(5 * fullStop(gentle).distance);
    expect(stop.summary.cameToRest).toBe(true);
    expect(stop.trace.pressure[0].at(-1)).toBeLessThan(1e3);
  });

  it('that seeks a deceleration finds it, and holds it', () => {
    const foot = { kind: 'deceleration', deceleration: 4, rampTime: 0.3, greatestForce: 500 } as const;
    const { trace, summary } = fullStopTrace({ ...driven, foot });
    const held = trace.deceleration.filter((_, node) => trace.time[node]! > 2 && trace.speed[node]! > 2);
    expect(held.length).toBeGreaterThan(100);
    expect(Math.min(...held)).toBeGreaterThan(3.9);
    expect(Math.max(...held)).toBeLessThan(4.1);
    expect(summary.distance).toBeLessThan(1.15 * (27.8 ** 2 / 8));
  });

  it('that seeks more than it can press for presses as hard as it may', () => {
    const foot = { kind: 'deceleration', deceleration: 20, rampTime: 0.1, greatestForce: 60 } as const;
    const { trace } = fullStopTrace({ ...driven, foot });
    expect(Math.max(...trace.pedalForce)).toBeGreaterThan(59);
    expect(Math.max(...trace.pedalForce)).toBeLessThan(61);
  });

  it('that does nothing leaves it to drag and rolling resistance', () => {
    const { distance, energies } = fullStop({ ...driven, foot: { kind: 'ramp', force: 0, rampTime: 0 } });
    expect(distance).toBeGreaterThan(1000);
    expect(energies.brakes).toBe(0);
    expect(energies.airDrag).toBeGreaterThan(0.1 * energies.kineticIn);
  });
});

describe('a full stop at the limit', () => {
  it('with locked wheels slides, on its tires and not on its brakes', () => {
    const { summary, trace } = fullStopTrace(locked);
    expect(summary.limitedBy).toBe('front lock');
    expect(summary.frontSlideShare).toBeGreaterThan(0.8);
    expect(standingAbove(trace, 15)).toContain(0);
    expect(summary.energies.tireSlip).toBeGreaterThan(0.6 * summary.energies.kineticIn);
  });

  it('is shorter with a driver at the limit than with locked wheels, who lets no wheel stand', () => {
    const { summary, trace } = fullStopTrace(driven);
    expect(summary.distance).toBeLessThan(fullStop(locked).distance);
    expect(summary.limitedBy).toBe('front lock');
    expect(standingAbove(trace, 1)).toEqual([]);
  });

  it('is shorter the nearer the driver goes to it', () => {
    const distances = [0.7, 0.8, 0.9].map((driverShare) => fullStop({ ...driven, driverShare }).distance);
    expect(distances).toEqual(distances.toSorted((first, second) => second - first));
  });

  it('with antilock cycles, lets no wheel stand above its least speed, and is shorter than locked wheels', () => {
    const { summary, trace } = fullStopTrace(base);
    expect(summary.limitedBy).toBe('tire grip');
    expect(summary.frontCycles).toBeGreaterThan(4);
    expect(summary.efficiency).toBeGreaterThan(0.8);
    expect(summary.efficiency).toBeLessThan(1);
    expect(standingAbove(trace, 2.5)).toEqual([]);
    expect(summary.distance).toBeLessThan(fullStop(locked).distance);
  });

  it('with antilock off below 8 m/s slides from there', () => {
    const antilock = {
      kind: 'threshold',
      efficiency: 0.9,
      minimumSpeed: 8,
      electronicRearLimit: true,
    } as const;
    const { trace } = fullStopTrace(withSetUp(base, { antilock }));
    expect(standingAbove(trace, 8.2)).toEqual([]);
    expect(standingAbove(trace, 3)).toContain(0);
  });

  it('lets wheels go at a creep, whatever least speed is stated, and so comes to rest on a descent', () => {
    const antilock = {
      kind: 'threshold',
      efficiency: 0.9,
      minimumSpeed: 0,
      electronicRearLimit: true,
    } as const;
    const stop = withSetUp(
      { ...base, road: { ...exampleRoad, surfaceFactor: 0.1, grade: -0.01 } },
      { antilock },
    );
    expect(fullStop(stop).cameToRest).toBe(true);
  });

  it('with an antilock that looks half as often and lets off slowly still stops', () => {
    const antilockControl = {
      samplePeriod: 0.01,
      slipThreshold: 0.2,
      rimDeceleration: 20,
      slipFloor: 0.08,
      dumpTime: 0.1,
      fastShare: 0.7,
      buildTime: 1.5,
    };
    const summary = fullStop({ ...base, antilockControl });
    expect(summary.efficiency).toBeGreaterThan(0.7);
    expect(summary.efficiency).toBeLessThan(1);
    expect(summary.distance).not.toBe(fullStop(base).distance);
  });

  it('with an electronic rear limit alone keeps the rear wheels turning, not the front ones', () => {
    const limited = {
      ...base,
      setUp: rearHeavy({ kind: 'none', electronicRearLimit: true }),
      lockedWheels: true,
    };
    const free = { ...base, setUp: rearHeavy(nothing), lockedWheels: true };
    const kept = standingAbove(fullStopTrace(limited).trace, 2.5);
    expect(kept).not.toContain(2);
    expect(kept).not.toContain(3);
    expect(standingAbove(fullStopTrace(free).trace, 2.5)).toEqual(expect.arrayContaining([2, 3]));
    expect(fullStop(limited).rearCycles).toBeGreaterThan(0);
    expect(fullStop(limited).frontCycles).toBe(0);
  });

  it('on sticky tires under a huge foot lifts its rear wheels, which then carry and give nothing', () => {
    const tall = withCar(base, { centerOfGravityHeight: 0.9, wheelbase: 1.8, frontLoadShare: 0.6 });
    const stop = {
      ...tall,
      setUp: onStickyTires(tall.setUp),
      foot: { kind: 'ramp', force: 5000, rampTime: 0.05 },
    } as const;
    const { trace, summary } = fullStopTrace(
      withSetUp(stop, { antilock: nothing, rearValve: { kind: 'none' } }),
    );
    expect(summary.cameToRest).toBe(true);
    expect(Math.min(...trace.load[2])).toBe(0);
    trace.load[2].forEach((load, node) => {
      if (load === 0) expect(trace.brakeForce[2][node]).toBe(0);
    });
  });
});

describe('where and how a full stop happens', () => {
  it('goes further downhill and less far uphill', () => {
    const on = (grade: number): number => fullStop({ ...gentle, road: { ...exampleRoad, grade } }).distance;
    expect(on(0.06)).toBeLessThan(on(0));
    expect(on(0)).toBeLessThan(on(-0.06));
  });

  it('goes further through more water and on less tread, and more so from a higher speed', () => {
    const through = (waterDepth: number, treadDepth: number, speed = 30): number => {
      const tire = { ...exampleSetUp.frontTire, treadDepth };
      const stop = withSetUp(base, { frontTire: tire, rearTire: tire });
      return fullStop({ ...stop, speed, road: { ...exampleRoad, waterDepth } }).distance;
    };
    expect(through(0.0005, 0.007)).toBeGreaterThan(1.1 * through(0, 0.007));
    expect(through(0.001, 0.007)).toBeGreaterThan(through(0.0005, 0.007));
    expect(through(0.001, 0.002)).toBeGreaterThan(through(0.001, 0.007));
    const worse = (speed: number): number => through(0.001, 0.002, speed) / through(0, 0.002, speed);
    expect(worse(36)).toBeGreaterThan(1.1 * worse(15));
  });

  it('on water is near the quick stop, which takes the same water, and says where the source ends', () => {
    const wet = { ...base, road: { ...exampleRoad, waterDepth: 0.001 } };
    const quick = quickStop({ ...wet, foot: { force: 300, rampTime: 0.2 } });
    expect(Math.abs(fullStop(wet).distance / quick.distance - 1)).toBeLessThan(0.06);
    expect(fullStop(wet).distance).toBeGreaterThan(1.5 * fullStop(base).distance);
    expect(fullStop(wet).isBeyondWaterSource).toBe(false);
    expect(fullStop({ ...wet, speed: 40 }).isBeyondWaterSource).toBe(true);
    expect(fullStop({ ...base, speed: 40 }).isBeyondWaterSource).toBe(false);
    expect(() => fullStop({ ...base, road: { ...exampleRoad, waterDepth: 0.01 } })).toThrow(
      /0.01 m; accepted is 0 to 0.002 m/,
    );
  });

  it('does not come to rest on a steep descent with a weak foot, and says so', () => {
    const road = { ...exampleRoad, grade: -0.2 };
    const summary = fullStop({ ...driven, road, foot: { kind: 'ramp', force: 5, rampTime: 0.2 } });
    expect(summary.cameToRest).toBe(false);
    expect(summary.distance).toBe(Infinity);
    expect(summary.time).toBe(Infinity);
    expect(summary.meanDeceleration).toBe(0);
    expect(Object.values(summary.energies).every(Number.isFinite)).toBe(true);
  });

  it('from walking pace and from a creep is short', () => {
    expect(fullStop({ ...base, speed: 1 }).distance).toBeLessThan(0.5);
    expect(fullStop({ ...base, speed: 0.1 }).distance).toBeLessThan(0.05);
    expect(fullStop({ ...base, speed: 0.1 }).distance).toBeGreaterThan(0.0005);
  });

  it('under a huge foot at great speed has no number that is none', () => {
    const summary = fullStop({ ...base, speed: 150, foot: { kind: 'ramp', force: 5000, rampTime: 0 } });
    const { cameToRest, limitedBy, front, rear, energies, isBeyondWaterSource, ...figures } = summary;
    const all = [...Object.values(figures), ...Object.values(front), ...Object.values(rear)];
    expect([...all, ...Object.values(energies)].every(Number.isFinite)).toBe(true);
    expect(cameToRest).toBe(true);
    expect(isBeyondWaterSource).toBe(false);
    expect(limitedBy).toBe('tire grip');
  });

  it('warms the rotors, the front ones more, and fades where the pads do', () => {
    const summary = fullStop(base);
    expect(summary.front.bulkAtRest).toBeGreaterThan(summary.rear.bulkAtRest);
    expect(summary.front.peakInterface).toBeGreaterThan(summary.front.bulkAtRest);
    const hot = fullStop({ ...gentle, rotorTemperatures: { front: 550, rear: 550 } });
    expect(hot.distance).toBeGreaterThan(1.1 * fullStop(gentle).distance);
  });

  it('with the clutch in turns more with it, and the engine takes its part', () => {
    const coupled = withCar(gentle, { drivelineInertia: 4, engineDrag: 60, frontDriveShare: 0 });
    expect(fullStop(coupled).energies.driveline).toBeGreaterThan(0);
    const heavy = withCar(gentle, { drivelineInertia: 4, frontDriveShare: 0 });
    expect(fullStop(heavy).distance).toBeGreaterThan(fullStop(gentle).distance);
    expect(fullStop(coupled).distance).toBeLessThan(fullStop(heavy).distance);
  });

  it('gives bit for bit the same answer in a shared room as in a new one', () => {
    const room = fullStopWorkspace();
    for (const stop of [base, driven, locked, gentle, base, gentle, locked, driven])
      expect(fullStop(stop, room)).toEqual(fullStop(stop));
  });
});

describe('a full stop refuses what cannot be', () => {
  const control = {
    samplePeriod: 0.005,
    slipThreshold: 0.16,
    rimDeceleration: 25,
    slipFloor: 0.06,
    dumpTime: 0.05,
    fastShare: 0.85,
    buildTime: 0.8,
  };
  const { frontTire } = exampleSetUp;
  const cases: readonly (readonly [string, FullStopInput])[] = [
    ['speed is 0.05 m/s; accepted is 0.1 to 150 m/s', { ...base, speed: 0.05 }],
    ['speed is NaN m/s; accepted is 0.1 to 150 m/s', { ...base, speed: Number.NaN }],
    [
      'pedal force is 6000 N; accepted is 0 to 5000 N',
      { ...base, foot: { kind: 'ramp', force: 6000, rampTime: 0 } },
    ],
    [
      'ramp time of the foot is -1 s; accepted is 0 to 60 s',
      { ...base, foot: { kind: 'ramp', force: 100, rampTime: -1 } },
    ],
    [
      'points of the pedal force is 0; accepted is 1 to 10000000',
      { ...base, foot: { kind: 'trace', times: [], forces: [] } },
    ],
    [
      'values of the pedal force is 1; accepted is 2 to 2',
      { ...base, foot: { kind: 'trace', times: [0, 1], forces: [1] } },
    ],
    [
      'first time of the pedal force is 0.1 s; accepted is 0 to 0 s',
      { ...base, foot: { kind: 'trace', times: [0.1], forces: [1] } },
    ],
    [
      'time 3 of the pedal force is 0.5 s; accepted is 1 to 100000 s',
      { ...base, foot: { kind: 'trace', times: [0, 1, 0.5], forces: [1, 1, 1] } },
    ],
    [
      'pedal force 2 is -3 N; accepted is 0 to 5000 N',
      { ...base, foot: { kind: 'trace', times: [0, 1], forces: [1, -3] } },
    ],
    [
      'deceleration wanted is 40 m/s²; accepted is 0.05 to 30 m/s²',
      { ...base, foot: { kind: 'deceleration', deceleration: 40, rampTime: 0, greatestForce: 500 } },
    ],
    [
      'greatest pedal force is 0 N; accepted is 1 to 5000 N',
      { ...base, foot: { kind: 'deceleration', deceleration: 5, rampTime: 0, greatestForce: 0 } },
    ],
    ['share of the lock limit is 2; accepted is 0.1 to 1', { ...driven, driverShare: 2 }],
    ['refinement is 0; accepted is 1 to 1000', { ...base, refinement: 0 }],
    ['phase of the control is 1.5; accepted is 0.000001 to 1', { ...base, controlPhase: 1.5 }],
    [
      'period of the antilock is 0 s; accepted is 0.001 to 0.05 s',
      { ...base, antilockControl: { ...control, samplePeriod: 0 } },
    ],
    [
      'slip floor of the antilock is 0.3; accepted is 0.001 to 0.16',
      { ...base, antilockControl: { ...control, slipFloor: 0.3 } },
    ],
    [
      'relaxation length is 0 m; accepted is 0.02 to 2 m',
      withSetUp(base, { frontTire: { ...frontTire, relaxationLength: 0 } }),
    ],
    [
      'rolling radius is 2 m; accepted is 0.1 to 1 m',
      withSetUp(base, { rearTire: { ...frontTire, rollingRadius: 2 } }),
    ],
    ['pitch frequency is 0 Hz; accepted is 0.3 to 20 Hz', withCar(base, { pitchFrequency: 0 })],
    ['front track is 9 m; accepted is 0.5 to 3 m', withCar(base, { frontTrack: 9 })],
    ['wheel inertia is 0 kg m²; accepted is 0.01 to 50 kg m²', withCar(base, { rearWheelInertia: 0 })],
    [
      'rotor temperature is -300 °C; accepted is -60 to 1500 °C',
      { ...base, rotorTemperatures: { front: 20, rear: -300 } },
    ],
  ];

  it.each(cases)('%s', (message, stop) => {
    expect(() => fullStop(stop)).toThrow(message);
  });

  it('and a slip curve that no tire has, with the nearest range', () => {
    const tire = { ...frontTire, slideRatio: 0.05 };
    expect(() => fullStop(withSetUp(base, { frontTire: tire }))).toThrow(
      /^slide over peak friction .* is 0.05; accepted is 0\.\d+ to 0.999$/,
    );
  });
});
