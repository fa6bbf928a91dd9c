import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import type { Antilock } from '../set-up/antilock.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { quickStop, stopWorkspace } from './quick-stop.ts';
import type { StopInput } from './stop-input.ts';

const base: StopInput = {
  setUp: exampleSetUp,
  road: exampleRoad,
  foot: { force: 300, rampTime: 0.2 },
  speed: 27.8,
};
const noAntilock: Antilock = { kind: 'none', electronicRearLimit: false };

function withSetUp(change: Partial<SetUp>, stop: StopInput = base): StopInput {
  return { ...stop, setUp: { ...stop.setUp, ...change } };
}

/** The same car with so much rear brake that the rear axle locks first. */
function rearHeavy(antilock: Antilock): StopInput {
  const { caliper } = exampleSetUp.rearBrake;
  const rearBrake = { ...exampleSetUp.rearBrake, caliper: { ...caliper, pistonDiameters: [0.054] } };
  return withSetUp({ rearBrake, rearValve: { kind: 'none' }, antilock });
}

describe('the quick stop', () => {
  it('gives the same answer in a shared room as in a new one', () => {
    const room = stopWorkspace();
    quickStop(rearHeavy(noAntilock), room);
    expect(quickStop(base, room)).toEqual(quickStop(base));
  });

  it('is limited by the tires where antilock works, by torque under a light foot', () => {
    expect(quickStop(base).limitedBy).toBe('tire grip');
    expect(quickStop({ ...base, foot: { force: 90, rampTime: 0.2 } }).limitedBy).toBe('brake torque');
  });

  it('without antilock is limited by the axle that locks first, and a driver does better than locked wheels', () => {
    const driven = quickStop(withSetUp({ antilock: noAntilock }));
    const locked = quickStop({ ...withSetUp({ antilock: noAntilock }), lockedWheels: true });
    expect(driven.limitedBy).toBe('front lock');
    expect(locked.limitedBy).toBe('front lock');
    expect(locked.distance).toBeGreaterThan(driven.distance);
    expect(locked.energies.tireSlip).toBeGreaterThan(5 * driven.energies.tireSlip);
    expect(quickStop(rearHeavy(noAntilock)).limitedBy).toBe('rear lock');
    expect(quickStop({ ...rearHeavy(noAntilock), lockedWheels: true }).limitedBy).toBe('rear lock');
  });

  it('lets a driver nearer to the limit stop shorter', () => {
    const driven = withSetUp({ antilock: noAntilock });
    const distances = [0.7, 0.8, 0.9, 1].map((driverShare) => quickStop({ ...driven, driverShare }).distance);
    expect(distances).toEqual(distances.toSorted((first, second) => second - first));
  });

  it('lets a rear limit hold the rear axle so that the front decides', () => {
    const limited = quickStop(rearHeavy({ kind: 'none', electronicRearLimit: true }));
    expect(limited.limitedBy).not.toBe('rear lock');
    expect(limited.distance).toBeLessThan(quickStop(rearHeavy(noAntilock)).distance);
  });

  it('is longer the worse the antilock is, and longer where it lets go early', () => {
    const antilock = {
      kind: 'threshold' as const,
      efficiency: 0.95,
      minimumSpeed: 2,
      electronicRearLimit: true,
    };
    const good = quickStop(withSetUp({ antilock })).distance;
    expect(quickStop(withSetUp({ antilock: { ...antilock, efficiency: 0.85 } })).distance).toBeGreaterThan(
      good,
    );
    expect(quickStop(withSetUp({ antilock: { ...antilock, minimumSpeed: 8 } })).distance).toBeGreaterThan(
      good,
    );
  });

  it('takes longer downhill, on a slippery road, with a slow foot', () => {
    const flat = quickStop(base).distance;
    expect(quickStop({ ...base, road: { ...exampleRoad, grade: -0.08 } }).distance).toBeGreaterThan(flat);
    expect(quickStop({ ...base, road: { ...exampleRoad, surfaceFactor: 0.6 } }).distance).toBeGreaterThan(
      flat,
    );
    expect(quickStop({ ...base, foot: { force: 300, rampTime: 0.6 } }).distance).toBeGreaterThan(flat + 2);
  });

  it('fades where hot pads lose friction and torque is what limits it', () => {
    const light = { ...base, foot: { force: 90, rampTime: 0.2 } };
    const hot = { ...light, rotorTemperatures: { front: 550, rear: 450 } };
    expect(quickStop(hot).distance).toBeGreaterThan(1.1 * quickStop(light).distance);
    expect(quickStop({ ...hot, effectsOff: ['heat'] }).front.peakInterface).toBeGreaterThan(550);
  });

  it('has a peak over the mean fully developed deceleration over the mean from the first touch', () => {
    const { peakDeceleration, meanFullyDevelopedDeceleration, meanDeceleration, distance, time } =
      quickStop(base);
    expect(peakDeceleration).toBeGreaterThan(meanFullyDevelopedDeceleration);
    expect(meanFullyDevelopedDeceleration).toBeGreaterThan(meanDeceleration);
    expect(meanDeceleration).toBeCloseTo((27.8 * 27.8) / (2 * distance), 9);
    expect(time).toBeGreaterThan(distance / 27.8);
  });

  it('says so where the car does not come to rest', () => {
    const summary = quickStop({
      ...base,
      foot: { force: 5, rampTime: 0.1 },
      road: { ...exampleRoad, grade: -0.2 },
    });
    expect(summary).toMatchObject({
      cameToRest: false,
      distance: Infinity,
      time: Infinity,
      meanDeceleration: 0,
    });
  });

  it('lets a foot below the share alone, and never stops longer for a harder one', () => {
    const driven = { ...withSetUp({ antilock: noAntilock }), driverShare: 0.9 };
    const at = (force: number, driverShare = 0.9) =>
      quickStop({ ...driven, driverShare, foot: { force, rampTime: 0.2 } });
    const first = Array.from({ length: 60 }, (_, i) => 60 + 5 * i).find(
      (force) => at(force).limitedBy === 'front lock',
    )!;
    const light = 0.9 * first;
    expect(at(light).distance).toBe(at(light, 1).distance);
    let before = Infinity;
    for (let force = light; force < 1.5 * first; force *= 1.002) {
      const { distance } = at(force);
      expect(distance).toBeLessThan(before * (1 + 1e-5));
      expect(distance).toBeGreaterThan(before === Infinity ? 0 : 0.995 * before);
      before = distance;
    }
  });

  it('takes driveline and engine into account at the driven axle', () => {
    const light = { ...base, foot: { force: 90, rampTime: 0.2 } };
    const withCar = (change: Partial<SetUp['car']>) =>
      quickStop(withSetUp({ car: { ...exampleSetUp.car, ...change } }, light));
    const plain = withCar({});
    expect(plain.energies.driveline).toBe(0);
    expect(withCar({ drivelineInertia: 4 }).distance).toBeGreaterThan(plain.distance);
    const held = withCar({ engineDrag: 100, frontDriveShare: 1 });
    expect(held.distance).toBeLessThan(plain.distance);
    const { rollingRadius } = exampleSetUp.frontTire;
    const all = (100 / rollingRadius) * held.distance;
    expect(held.energies.driveline).toBeLessThan(all);
    expect(held.energies.driveline).toBeGreaterThan(0.95 * all);
    expect(held.energies.frontRotors).toBeLessThan(plain.energies.frontRotors);
  });

  it('lets the engine help tires no further than they can: on the limit it changes next to nothing', () => {
    const driven = withSetUp({ antilock: noAntilock });
    const engine = withSetUp({ car: { ...exampleSetUp.car, engineDrag: 100, frontDriveShare: 1 } }, driven);
    expect(quickStop(engine).front.peakInterface).toBeLessThan(quickStop(driven).front.peakInterface);
    expect(Math.abs(quickStop(engine).distance / quickStop(driven).distance - 1)).toBeLessThan(0.03);
  });

  it('meets water by speed, depth and tread, and says where its source ends', () => {
    const wet = { ...base, road: { ...exampleRoad, waterDepth: 0.0005 } };
    const onFactor = (surfaceFactor: number, speed: number) =>
      quickStop({ ...base, speed, road: { ...exampleRoad, surfaceFactor } }).distance;
    const slow = 12;
    const factor = 0.68;
    const excess = (speed: number) => quickStop({ ...wet, speed }).distance / onFactor(factor, speed);
    expect(Math.abs(excess(slow) - 1)).toBeLessThan(0.03);
    expect(excess(34)).toBeGreaterThan(excess(slow) + 0.1);
    const bald = { ...exampleSetUp.frontTire, treadDepth: 0.0016 };
    const worn = withSetUp({ frontTire: bald, rearTire: bald }, wet);
    expect(quickStop(worn).distance).toBeGreaterThan(1.3 * quickStop(wet).distance);
    expect(quickStop(wet).isBeyondWaterSource).toBe(false);
    expect(quickStop({ ...wet, speed: 40 }).isBeyondWaterSource).toBe(true);
    expect(quickStop({ ...base, speed: 40 }).isBeyondWaterSource).toBe(false);
    expect(() => quickStop({ ...base, road: { ...exampleRoad, waterDepth: 0.003 } })).toThrow(
      'depth of water',
    );
  });

  it('says that a car that floats, with nothing else to slow it, does not come to rest', () => {
    const { car, frontTire } = exampleSetUp;
    const still = { dragArea: 0, frontLiftArea: 0, rearLiftArea: 0, rollingResistance: 0 };
    const worn = { ...frontTire, treadDepth: 0.0016 };
    const floating = withSetUp({ car: { ...car, ...still }, frontTire: worn, rearTire: worn });
    const stop = quickStop({ ...floating, road: { ...exampleRoad, waterDepth: 0.002 }, speed: 60 });
    expect(stop).toMatchObject({ cameToRest: false, distance: Infinity });
  });

  it('refuses what cannot be', () => {
    expect(() => quickStop({ ...base, speed: 0 })).toThrow('speed');
    expect(() => quickStop({ ...base, foot: { force: -1, rampTime: 0 } })).toThrow('pedal force');
    expect(() => quickStop({ ...base, foot: { force: 100, rampTime: -1 } })).toThrow('ramp time');
    expect(() => quickStop({ ...base, rotorTemperatures: { front: 3000, rear: 20 } })).toThrow('temperature');
    expect(() => quickStop({ ...withSetUp({ antilock: noAntilock }), driverShare: 1.2 })).toThrow(
      'lock limit',
    );
  });
});
