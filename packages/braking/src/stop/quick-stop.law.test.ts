import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brakeTorque } from '../corner/brake-torque.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { SetUp } from '../set-up/set-up.ts';
import {
  anyStop,
  anyUsualStop,
  between,
  onOneFriction,
  onStickyTires,
  withoutResistance,
} from './any-stop.testing.ts';
import { idealStop } from './closed-forms/ideal-stop.ts';
import { linearBuildUpStop } from './closed-forms/linear-build-up-stop.ts';
import { plainMarch } from './plain-march.testing.ts';
import { quickDistance } from './quick-distance.ts';
import { quickStop, stopWorkspace } from './quick-stop.ts';
import { stopEffects } from './stop-effect.ts';
import type { StopInput } from './stop-input.ts';

const march = stopWorkspace();
const distanceOf = (stop: StopInput): number => quickStop(stop, march).distance;
const allOff = { effectsOff: stopEffects };
const runs = { numRuns: 600 };

function withMass(setUp: SetUp, mass: number): SetUp {
  return { ...setUp, car: { ...setUp.car, mass } };
}

/** N: both axles' brake force at the road, by the static functions. */
function brakeForce({ setUp, foot }: StopInput): number {
  const pressures = linePressures({ setUp, pedalForce: foot.force });
  const axle = (brake: SetUp['frontBrake'], pressure: number, radius: number) =>
    (2 * brakeTorque({ brake, pressure, friction: brake.pad.frictions[0]! })) / radius;
  const { frontBrake, rearBrake, frontTire, rearTire } = setUp;
  const front = axle(frontBrake, pressures.front, frontTire.rollingRadius);
  return front + axle(rearBrake, pressures.rear, rearTire.rollingRadius);
}

function effectiveMass({ car, frontTire, rearTire }: SetUp): number {
  const front = (2 * car.frontWheelInertia) / frontTire.rollingRadius ** 2;
  const rear = (2 * car.rearWheelInertia) / rearTire.rollingRadius ** 2;
  const frontDriven = (car.frontDriveShare * car.drivelineInertia) / frontTire.rollingRadius ** 2;
  const rearDriven = ((1 - car.frontDriveShare) * car.drivelineInertia) / rearTire.rollingRadius ** 2;
  return car.mass + front + rear + frontDriven + rearDriven;
}

/** The same pads, as warm as you like. */
function withFlatPads(setUp: SetUp): SetUp {
  const flat = (brake: SetUp['frontBrake']) => {
    const pad = { ...brake.pad, frictionTemperatures: [20], frictions: [brake.pad.frictions[0]!] };
    return { ...brake, pad };
  };
  return { ...setUp, frontBrake: flat(setUp.frontBrake), rearBrake: flat(setUp.rearBrake) };
}

/** Stops whose tires never come to their limit, pads that do not fade, no rear limit. */
const torqueLimited = anyStop
  .map((stop): StopInput => {
    const setUp = withFlatPads(onStickyTires(stop.setUp));
    const antilock = { kind: 'none' as const, electronicRearLimit: false };
    return {
      ...stop,
      setUp: { ...setUp, antilock },
      lockedWheels: true,
      road: { ...stop.road, surfaceFactor: 1, waterDepth: 0 },
    };
  })
  .filter((stop) => brakeForce(stop) > 500 && brakeForce(stop) < 8 * stop.setUp.car.mass);

/** Share of stops, 1, whose distance changes by less than 0.05 % when every step is halved. */
function shareWithinHalving(anyOfThem: fc.Arbitrary<StopInput>): number {
  let stops = 0;
  let close = 0;
  const look = (stop: StopInput): void => {
    const distance = distanceOf(stop);
    if (distance === Infinity) return;
    stops += 1;
    if (Math.abs(distanceOf({ ...stop, refinement: 2 }) / distance - 1) < 5e-4) close += 1;
  };
  fc.assert(fc.property(anyOfThem, look), { numRuns: 1000 });
  expect(stops).toBeGreaterThan(800);
  return close / stops;
}

function withoutAntilock(stop: StopInput): StopInput {
  const { electronicRearLimit } = stop.setUp.antilock;
  return { ...stop, setUp: { ...stop.setUp, antilock: { kind: 'none', electronicRearLimit } } };
}

/** A record with every number in it changed, its lists and records too. */
function withNumbers<T>(value: T, change: (number: number) => number): T {
  if (typeof value === 'number') return change(value) as T;
  if (Array.isArray(value)) return value.map((each: unknown) => withNumbers(each, change)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, withNumbers(each, change)]),
  ) as T;
}

/** The stop with its own figures as people write them, so that times, speeds and steps fall on each other. */
function rounded(stop: StopInput): StopInput {
  const { foot, speed } = stop;
  const temperatures = stop.rotorTemperatures!;
  const round = (number: number) => Number(number.toPrecision(2));
  return { ...stop, ...withNumbers({ foot, speed, rotorTemperatures: temperatures }, round) };
}

/**
 * The stop as other units might give it: every number smaller by a rounding or two, so that it stays in its range. Rotors
 * and hoses stay as they are, whose figures limit each other.
 */
function withRoundings(stop: StopInput, parts: Iterator<number>): StopInput {
  const other = withNumbers(stop, (number) => number * (1 - 4e-16 * (parts.next().value as number)));
  const { setUp } = other;
  const asItWas = ({ rotor, hose }: SetUp['frontBrake']) => ({ rotor, hose });
  const frontBrake = { ...setUp.frontBrake, ...asItWas(stop.setUp.frontBrake) };
  const rearBrake = { ...setUp.rearBrake, ...asItWas(stop.setUp.rearBrake) };
  return { ...other, setUp: { ...setUp, frontBrake, rearBrake } };
}

/** Whether no wheel of the stop that has just been marched came to its limit. */
function onlyTorque(): boolean {
  const { limitedDistances } = march.books;
  return limitedDistances['brake torque'] > march.distance * (1 - 1e-9);
}

describe('the quick stop', () => {
  it('with every effect off is the ideal stop: v² / 2 μ g', () => {
    fc.assert(
      fc.property(anyStop, between(0.2, 1.5), (stop, friction) => {
        const ideal = idealStop({ speed: stop.speed, friction });
        const summary = quickStop({ ...onOneFriction(withoutResistance(stop), friction), ...allOff }, march);
        expect(summary.distance / ideal.distance).toBeCloseTo(1, 6);
        expect(summary.time / ideal.time).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });

  it('is the ideal stop, too, with brakes that are strong, instant and held at the peak', () => {
    const anyStrong = fc.record({ stop: anyStop, friction: between(0.2, 0.9) }).map(({ stop, friction }) => {
      const plain = onOneFriction(withoutResistance(stop), friction);
      const antilock = {
        kind: 'threshold' as const,
        efficiency: 1,
        minimumSpeed: 0,
        electronicRearLimit: false,
      };
      const setUp: SetUp = { ...withMass(plain.setUp, 500), antilock, rearValve: { kind: 'none' } };
      return { stop: { ...plain, setUp, foot: { force: 700, rampTime: 0 }, pressureLag: 0 }, friction };
    });
    let reached = 0;
    fc.assert(
      fc.property(anyStrong, ({ stop, friction }) => {
        const summary = quickStop({ ...stop, effectsOff: ['heat'] }, march);
        const { front, rear } = march.car;
        if (front.grip !== 'held' || rear.grip !== 'held') return;
        reached += 1;
        expect(summary.distance / idealStop({ speed: stop.speed, friction }).distance).toBeCloseTo(1, 6);
      }),
      runs,
    );
    expect(reached).toBeGreaterThan(100);
  });

  it('with drag has the logarithmic closed form', () => {
    fc.assert(
      fc.property(anyStop, between(0.2, 1.5), between(0.1, 3), (stop, friction, dragArea) => {
        const plain = onOneFriction(withoutResistance(stop), friction);
        const setUp = { ...plain.setUp, car: { ...plain.setUp.car, dragArea } };
        const dragOverMass = (0.5 * plain.road.airDensity * dragArea) / setUp.car.mass;
        const ideal = idealStop({ speed: stop.speed, friction, dragOverMass });
        const summary = quickStop({ ...plain, setUp, ...allOff }, march);
        expect(Math.abs(summary.distance / ideal.distance - 1)).toBeLessThan(1e-3);
        expect(Math.abs(summary.time / ideal.time - 1)).toBeLessThan(1e-3);
      }),
      runs,
    );
  });

  it('keeps distance times brake force over effective mass while torque is what limits it', () => {
    fc.assert(
      fc.property(torqueLimited, (stop) => {
        const plain = { ...withoutResistance(stop), effectsOff: ['build-up'] as const };
        const summary = quickStop(plain, march);
        fc.pre(onlyTorque());
        const product = (summary.distance * brakeForce(stop)) / effectiveMass(stop.setUp);
        expect(product / (0.5 * stop.speed ** 2)).toBeCloseTo(1, 6);
        expect(summary.limitedBy).toBe('brake torque');
      }),
      runs,
    );
  });

  it('only gets shorter as force rises, with build-up, drag, rolling resistance and grade', () => {
    fc.assert(
      fc.property(torqueLimited, between(1.01, 1.5), (stop, factor) => {
        const harder = { ...stop, foot: { ...stop.foot, force: factor * stop.foot.force } };
        fc.pre(brakeForce(harder) < 8 * stop.setUp.car.mass);
        const before = distanceOf(stop);
        fc.pre(before < Infinity && onlyTorque());
        const after = distanceOf(harder);
        fc.pre(onlyTorque());
        expect(after).toBeLessThan(before);
      }),
      runs,
    );
  });

  it('does not depend on mass in the ideal stop of constant friction', () => {
    fc.assert(
      fc.property(anyStop, between(1.05, 2), (stop, factor) => {
        const plain = { ...onOneFriction(withoutResistance(stop), 0.9), ...allOff };
        const heavier = { ...plain, setUp: withMass(plain.setUp, factor * plain.setUp.car.mass) };
        expect(distanceOf(heavier) / distanceOf(plain)).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });

  it('is longer for a heavier car where friction falls with load', () => {
    fc.assert(
      fc.property(anyStop, between(1.05, 2), between(0.02, 0.3), (stop, factor, loadSensitivity) => {
        const flat = onOneFriction(withoutResistance(stop), 0.9);
        const tire = { ...flat.setUp.frontTire, loadSensitivity };
        const effectsOff = stopEffects.filter((effect) => effect !== 'load sensitivity');
        const light = { ...flat, setUp: { ...flat.setUp, frontTire: tire, rearTire: tire }, effectsOff };
        const heavy = { ...light, setUp: withMass(light.setUp, factor * light.setUp.car.mass) };
        expect(distanceOf(heavy)).toBeGreaterThan(distanceOf(light));
      }),
      runs,
    );
  });

  it('is never shorter than the ideal stop with the same drag, lift, rolling resistance and tires', () => {
    const effectsOff = stopEffects.filter((effect) => effect !== 'load sensitivity');
    fc.assert(
      fc.property(anyStop, (stop) => {
        const ideal = distanceOf({ ...stop, effectsOff });
        fc.pre(ideal < Infinity);
        expect(distanceOf(stop)).toBeGreaterThan(ideal * (1 - 5e-4));
      }),
      runs,
    );
  });

  it('is the same for the car seen in a mirror', () => {
    fc.assert(
      fc.property(anyStop, (stop) => {
        const { car } = stop.setUp;
        const mirrored = { ...stop.setUp, car: { ...car, leftLoadShare: 1 - car.leftLoadShare } };
        expect(distanceOf({ ...stop, setUp: mirrored }) / distanceOf(stop) || 1).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });

  it('follows the closed form of a deceleration that rises in a straight line', () => {
    fc.assert(
      fc.property(torqueLimited, between(0.05, 1), (stop, rampTime) => {
        const linear = withoutResistance(stop);
        const easy = (brake: SetUp['frontBrake']) => ({
          ...brake,
          caliper: { ...brake.caliper, pushOutPressure: 0 },
        });
        const setUp: SetUp = {
          ...linear.setUp,
          booster: { kind: 'none' },
          rearValve: { kind: 'none' },
          frontBrake: easy(stop.setUp.frontBrake),
          rearBrake: easy(stop.setUp.rearBrake),
        };
        const input = { ...linear, setUp, foot: { ...stop.foot, rampTime }, pressureLag: 0 };
        const deceleration = brakeForce(input) / effectiveMass(setUp);
        fc.pre(deceleration > 0.1 && deceleration < 8 && (deceleration * rampTime) / 2 < 0.7 * stop.speed);
        const exact = linearBuildUpStop({ speed: stop.speed, buildUpTime: rampTime, deceleration });
        const summary = quickStop(input, march);
        fc.pre(onlyTorque());
        expect(Math.abs(summary.distance / exact.distance - 1)).toBeLessThan(1e-3);
        expect(Math.abs(summary.time / exact.time - 1)).toBeLessThan(1e-3);
      }),
      runs,
    );
  });

  it('changes by less than 0.05 % when every step is halved, but for stops at the very edge of lock', () => {
    expect(shareWithinHalving(anyUsualStop.map(withoutAntilock))).toBeGreaterThanOrEqual(0.998);
    expect(shareWithinHalving(anyStop.map(withoutAntilock))).toBeGreaterThanOrEqual(0.996);
    expect(shareWithinHalving(anyUsualStop)).toBeGreaterThanOrEqual(0.997);
    expect(shareWithinHalving(anyStop)).toBeGreaterThanOrEqual(0.996);
  });

  it('does not feel a rounding of its inputs: no step or choice turns on one', () => {
    const anyOfThem = fc.oneof(anyUsualStop, anyUsualStop.map(rounded), anyStop, anyStop.map(rounded));
    const looks = { numRuns: 2000 };
    let compared = 0;
    fc.assert(
      fc.property(anyOfThem.map(withoutAntilock), fc.infiniteStream(between(0, 1)), (stop, parts) => {
        const before = quickStop(stop, march);
        const after = quickStop(withRoundings(stop, parts), march);
        if (!before.cameToRest || !after.cameToRest) return;
        compared += 1;
        expect(Math.abs(after.distance / before.distance - 1)).toBeLessThan(1e-6);
        expect(Math.abs(after.time / before.time - 1)).toBeLessThan(1e-6);
        expect(Math.abs(after.front.peakInterface - before.front.peakInterface)).toBeLessThan(1e-6 * 100);
      }),
      looks,
    );
    expect(compared).toBeGreaterThan(1500);
  });

  it('is the stop that a plain march of the static functions in steps of 1 ms finds', () => {
    const anyOfThem = anyUsualStop.map((stop): StopInput => {
      const { antilock } = stop.setUp;
      return {
        ...stop,
        setUp: { ...stop.setUp, antilock: { ...antilock, electronicRearLimit: false } },
        lockedWheels: true,
        pressureLag: 0.05,
        effectsOff: ['heat'],
      };
    });
    let close = 0;
    const compare = (stop: StopInput): void => {
      const error = Math.abs(distanceOf(stop) / plainMarch(stop, 0.05, 1e-3) - 1);
      if (error < 1e-3) close += 1;
    };
    fc.assert(fc.property(anyOfThem, compare), { numRuns: 12 });
    expect(close).toBeGreaterThanOrEqual(11);
  });

  it('gives numbers whatever the set-up, and says where the car does not come to rest', () => {
    fc.assert(
      fc.property(anyStop, fc.subarray([...stopEffects]), (stop, effectsOff) => {
        const { energies, front, rear, limitedBy, cameToRest, ...figures } = quickStop(
          { ...stop, effectsOff },
          march,
        );
        const numbers = [...Object.values(energies), ...Object.values(front), ...Object.values(rear)];
        for (const number of numbers) expect(Number.isFinite(number)).toBe(true);
        for (const number of Object.values(figures)) expect(number).not.toBeNaN();
        expect(figures.distance === Infinity).toBe(!cameToRest);
        expect(limitedBy).toMatch(/tire grip|brake torque|front lock|rear lock/);
      }),
      { numRuns: 1500 },
    );
  });
});

describe('the distance alone', () => {
  it('is bit by bit that of the whole stop', () => {
    fc.assert(
      fc.property(anyStop, (stop) => {
        expect(quickDistance(stop, march)).toBe(distanceOf(stop));
      }),
      runs,
    );
  });
});
