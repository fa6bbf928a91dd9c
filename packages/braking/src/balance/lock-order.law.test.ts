import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import { anyCar, anyRoad, anySetUp } from '../set-up/any-set-up.testing.ts';
import { exampleRoad } from '../set-up/example-set-up.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { adhesionUse } from './adhesion-use.ts';
import { annexFiveVerdict } from './annex-five-verdict.ts';
import { axleReserve, type Axle } from './axle-reserve.ts';
import { balanceCurve } from './balance-curve.ts';
import { idealBalance } from './ideal-balance.ts';
import { installedLine } from './installed-line.ts';
import { liftOffDeceleration } from './lift-off-deceleration.ts';
import { lockOrder } from './lock-order.ts';
import { usualPadTemperatures } from './pad-temperatures.ts';

const anySpeed = fc.double({ min: 0, max: 60, noNaN: true });

/** Brakes without push-out, valve or load sensitivity whose rear efficiency puts the ideal share at z. */
function balancedAt(setUp: SetUp, z: number): SetUp {
  const { front, rear } = idealBalance({ car: setUp.car, deceleration: z });
  const frontBrake = {
    ...setUp.frontBrake,
    caliper: { ...setUp.frontBrake.caliper, pushOutPressure: 0, efficiency: 1 },
  };
  const share = rear / front;
  // The larger share gets efficiency 1, so that the other one stays inside what is accepted.
  const caliper = (part: number) => ({ ...frontBrake.caliper, efficiency: part / Math.max(1, share) });
  return {
    ...setUp,
    car: { ...setUp.car, rollingResistance: 0, leftLoadShare: 0.5 },
    frontTire: { ...setUp.frontTire, loadSensitivity: 0, peakFriction: z },
    rearTire: { ...setUp.frontTire, loadSensitivity: 0, peakFriction: z },
    masterCylinder: { kind: 'tandem', bore: 0.02, stroke: 0.03, efficiency: 1 },
    booster: { kind: 'hydraulic', gain: 8, greatestAssist: 50_000 },
    rearValve: { kind: 'none' },
    frontBrake: { ...frontBrake, caliper: caliper(1) },
    rearBrake: { ...frontBrake, caliper: caliper(share) },
  };
}

describe('ideal curve', () => {
  it('sums to the deceleration and uses the same friction at both axles', () => {
    fc.assert(
      fc.property(anyCar, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (car, part) => {
        const deceleration = part * liftOffDeceleration(car);
        const { front, rear } = idealBalance({ car, deceleration });
        expect(front + rear).toBeCloseTo(deceleration, 12);
        const weight = car.mass * standardGravity;
        const use = adhesionUse({ car, frontForce: front * weight, rearForce: rear * weight });
        expect(use.front).toBeCloseTo(use.rear, 6);
        expect(use.front).toBeCloseTo(deceleration, 6);
      }),
      { numRuns: 500 },
    );
  });
});

describe('lock order', () => {
  it('has both axles lock together, at the friction of the road, where both use the same', () => {
    fc.assert(
      fc.property(anySetUp, fc.double({ min: 0.2, max: 1.1, noNaN: true }), (setUp, z) => {
        const { front, rear } = idealBalance({
          car: setUp.car,
          deceleration: Math.min(z, 0.9 * liftOffDeceleration(setUp.car)),
        });
        fc.pre(rear / front > 0.12 && rear / front < 8 && z < 0.9 * liftOffDeceleration(setUp.car));
        const balanced = balancedAt(setUp, z);
        const order = lockOrder({ setUp: balanced, road: exampleRoad });
        fc.pre(order.first !== 'none');
        expect(order.at?.deceleration).toBeCloseTo(z, 9);
        expect(order.front?.deceleration).toBeCloseTo(order.rear?.deceleration ?? 0, 6);
        expect(order.front?.pedalForce).toBeCloseTo(order.rear?.pedalForce ?? 0, 3);
      }),
      { numRuns: 500 },
    );
  });

  it('is right at the point that it names: no reserve there, reserve before it', () => {
    fc.assert(
      fc.property(anySetUp, anyRoad, anySpeed, (setUp, road, speed) => {
        const line = installedLine(setUp, usualPadTemperatures);
        const order = lockOrder({ setUp, road, speed });
        for (const axle of ['front', 'rear'] satisfies Axle[]) {
          const at = order[axle];
          const reserve = (force: number) => axleReserve({ setUp, road, speed }, line, force, axle);
          const force = at === null ? line.greatestMasterForce : at.frontPressure / line.frontGain;
          for (let step = 0; step < 40; step += 1)
            expect(reserve((force * step) / 40)).toBeGreaterThan(-1e-6);
          if (at !== null) expect(Math.abs(reserve(force))).toBeLessThan(1e-3);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('names the axle that needs the lighter foot, and a foot that gives those pressures', () => {
    fc.assert(
      fc.property(anySetUp, anyRoad, anySpeed, (setUp, road, speed) => {
        const order = lockOrder({ setUp, road, speed });
        if (order.first === 'front' && order.rear)
          expect(order.at?.pedalForce).toBeLessThanOrEqual(order.rear.pedalForce);
        if (order.first === 'rear' && order.front)
          expect(order.at?.pedalForce).toBeLessThanOrEqual(order.front.pedalForce);
        if (order.first === 'none') expect([order.at, order.front, order.rear]).toEqual([null, null, null]);
        if (order.at === null || order.at.pedalForce === 0) return;
        const pressures = linePressures({ setUp, pedalForce: order.at.pedalForce });
        expect(pressures.front).toBeCloseTo(order.at.frontPressure, 2);
        expect(pressures.rear).toBeCloseTo(order.at.rearPressure, 2);
      }),
      { numRuns: 500 },
    );
  });

  it('holds only numbers, wherever the car goes', () => {
    fc.assert(
      fc.property(anySetUp, anyRoad, anySpeed, (setUp, road, speed) => {
        const { at, front, rear, atStrongestFoot } = lockOrder({ setUp, road, speed });
        const points = [at, front, rear, atStrongestFoot].filter((point) => point !== null);
        for (const value of points.flatMap((point) => Object.values(point))) {
          expect(Number.isFinite(value)).toBe(true);
        }
        const { examinedTo } = annexFiveVerdict({ setUp });
        expect(Number.isFinite(examinedTo)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('of a car mirrored left to right is the same', () => {
    fc.assert(
      fc.property(anySetUp, anyRoad, (setUp, road) => {
        const car = { ...setUp.car, leftLoadShare: 1 - setUp.car.leftLoadShare };
        const order = lockOrder({ setUp, road });
        const mirrored = lockOrder({ setUp: { ...setUp, car }, road });
        expect(mirrored.first).toBe(order.first);
        expect(mirrored.at?.deceleration ?? -1).toBeCloseTo(order.at?.deceleration ?? -1, 9);
      }),
      { numRuns: 500 },
    );
  });
});

describe('balance curve', () => {
  it('sums to the deceleration on both curves and holds only numbers', () => {
    fc.assert(
      fc.property(anySetUp, (setUp) => {
        const { ideal, installed } = balanceCurve({ setUp, points: 25 });
        expect(installed.length).toBeGreaterThan(0);
        for (const point of [...ideal, ...installed]) {
          expect(point.frontForce + point.rearForce).toBeCloseTo(point.deceleration, 9);
          expect(Number.isFinite(point.frontAdhesion + point.rearAdhesion)).toBe(true);
          expect(Math.max(point.frontAdhesion, point.rearAdhesion)).toBeGreaterThanOrEqual(
            point.deceleration - 1e-9,
          );
        }
      }),
      { numRuns: 500 },
    );
  });
});
