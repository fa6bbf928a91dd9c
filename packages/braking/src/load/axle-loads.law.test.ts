import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyCar, anyRoad } from '../set-up/any-set-up.testing.ts';
import { axleLoads } from './axle-loads.ts';
import { standardGravity } from './standard-gravity.ts';
import { wheelLoads } from './wheel-loads.ts';

const anyMotion = fc.record({
  car: anyCar,
  road: anyRoad,
  deceleration: fc.double({ min: -10, max: 20, noNaN: true }),
  speed: fc.double({ min: 0, max: 70, noNaN: true }),
});

describe('axle and wheel loads', () => {
  it('sum to the weight on the slope less the lift', () => {
    fc.assert(
      fc.property(anyMotion, (motion) => {
        const { car, road, speed } = motion;
        const { front, rear } = axleLoads(motion);
        const airPressure = 0.5 * road.airDensity * speed ** 2;
        const lift = airPressure * (car.frontLiftArea + car.rearLiftArea);
        const expected = car.mass * standardGravity * Math.cos(Math.atan(road.grade)) - lift;
        expect(front + rear).toBeCloseTo(expected, 6);
        const wheels = wheelLoads(motion);
        expect(wheels[0] + wheels[1] + wheels[2] + wheels[3]).toBeCloseTo(expected, 6);
      }),
      { numRuns: 1000 },
    );
  });

  it('are never negative, and say which axle has lifted', () => {
    fc.assert(
      fc.property(anyMotion, (motion) => {
        const { front, rear, lifted } = axleLoads(motion);
        expect(Math.min(front, rear)).toBeGreaterThanOrEqual(0);
        if (lifted !== 'none') expect(lifted === 'front' ? front : rear).toBe(0);
      }),
      { numRuns: 1000 },
    );
  });

  it('move to the front as the car slows harder, and never back', () => {
    fc.assert(
      fc.property(anyMotion, fc.double({ min: 0, max: 5, noNaN: true }), (motion, more) => {
        const harder = axleLoads({ ...motion, deceleration: motion.deceleration + more });
        expect(harder.front).toBeGreaterThanOrEqual(axleLoads(motion).front - 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('of a car mirrored left to right are the mirrored loads', () => {
    fc.assert(
      fc.property(anyMotion, (motion) => {
        const { car } = motion;
        const mirrored = wheelLoads({ ...motion, car: { ...car, leftLoadShare: 1 - car.leftLoadShare } });
        const [frontLeft, frontRight, rearLeft, rearRight] = wheelLoads(motion);
        expect(mirrored[0]).toBeCloseTo(frontRight, 6);
        expect(mirrored[1]).toBeCloseTo(frontLeft, 6);
        expect(mirrored[2]).toBeCloseTo(rearRight, 6);
        expect(mirrored[3]).toBeCloseTo(rearLeft, 6);
      }),
      { numRuns: 500 },
    );
  });
});
