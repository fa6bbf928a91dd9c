import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardGravity } from '../load/standard-gravity.ts';
import type { FourWheels } from '../load/wheel-loads.ts';
import { anyCar, anySetUp } from '../set-up/any-set-up.testing.ts';
import { axleImbalance } from './axle-imbalance.ts';
import { brakePull } from './brake-pull.ts';
import { yawMoment } from './yaw-moment.ts';
import { evenly } from '../set-up/evenly.testing.ts';

const share = evenly(0, 1.5);
const anyWorking = fc.tuple(share, share, share, share);
const anyForce = evenly(0, 8000);
const anyForces = fc.tuple(anyForce, anyForce, anyForce, anyForce);
const mirrored = ([fl, fr, rl, rr]: FourWheels): FourWheels => [fr, fl, rr, rl];
const runs = { numRuns: 500 };

describe('mirrored left to right', () => {
  it('the yaw moment changes sign and nothing else does', () => {
    fc.assert(
      fc.property(anyCar, anyForces, (car, forces) => {
        const moment = yawMoment({ car, forces });
        expect(yawMoment({ car, forces: mirrored(forces) })).toBeCloseTo(-moment, 8);
      }),
      runs,
    );
  });

  it('a car with unequal brakes loses the same and pulls the other way', () => {
    fc.assert(
      fc.property(anySetUp, anyWorking, (setUp, working) => {
        const one = brakePull({ setUp, deceleration: 0.3, working });
        const car = { ...setUp.car, leftLoadShare: 1 - setUp.car.leftLoadShare };
        const other = brakePull({ setUp: { ...setUp, car }, deceleration: 0.3, working: mirrored(working) });
        if (one === undefined || other === undefined) {
          expect(one).toBe(other);
          return;
        }
        expect(other.yawMoment).toBeCloseTo(-one.yawMoment, 6);
        expect(other.deceleration).toBeCloseTo(one.deceleration, 12);
        expect([other.frontImbalance, other.rearImbalance]).toEqual([one.frontImbalance, one.rearImbalance]);
      }),
      runs,
    );
  });
});

describe('sound brakes', () => {
  it('do not pull and give what the foot asks', () => {
    fc.assert(
      fc.property(anySetUp, evenly(0.05, 0.6), (setUp, deceleration) => {
        const pull = brakePull({ setUp, deceleration, working: [1, 1, 1, 1] });
        if (pull === undefined) return;
        expect(pull.yawMoment).toBe(0);
        expect(pull.deceleration).toBeCloseTo(deceleration, 9);
      }),
      runs,
    );
  });
});

describe('one dead brake', () => {
  it('pulls by half the track times its own force, and takes that force from the stop', () => {
    fc.assert(
      fc.property(anySetUp, (setUp) => {
        const sound = brakePull({ setUp, deceleration: 0.3, working: [1, 1, 1, 1] });
        const dead = brakePull({ setUp, deceleration: 0.3, working: [0, 1, 1, 1] });
        if (sound === undefined || dead === undefined) {
          expect(sound).toBe(dead);
          return;
        }
        const lost = sound.forces[0];
        expect(dead.yawMoment).toBeCloseTo((-setUp.car.frontTrack / 2) * lost, 6);
        expect((sound.deceleration - dead.deceleration) * setUp.car.mass * standardGravity).toBeCloseTo(
          lost,
          5,
        );
        expect(dead.frontImbalance).toBe(lost > 0 ? 1 : 0);
      }),
      runs,
    );
  });

  it('is an imbalance between 0 and 1, whichever side it is on', () => {
    fc.assert(
      fc.property(anyForce, anyForce, (left, right) => {
        const imbalance = axleImbalance(left, right);
        expect(imbalance).toBe(axleImbalance(right, left));
        expect(imbalance).toBeGreaterThanOrEqual(0);
        expect(imbalance).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });
});
