import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardGravity } from '../load/standard-gravity.ts';
import { anyRoad, anySetUp } from '../set-up/any-set-up.testing.ts';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { annexFiveVerdict } from './annex-five-verdict.ts';
import { balanceCurve } from './balance-curve.ts';
import { drivenForces } from './driven-forces.ts';
import { leastBrakingRate } from './least-braking-rate.ts';
import { lockOrder } from './lock-order.ts';
import { mostAdhesionAllowed } from './most-adhesion-allowed.ts';
import { evenly } from '../set-up/evenly.testing.ts';

const runs = { numRuns: 500 };

describe('what the driven wheels do', () => {
  it('is the regenerated share of the weight, shared as the drive is', () => {
    fc.assert(
      fc.property(anySetUp, evenly(0.01, 0.4), (setUp, regeneration) => {
        const [base, taken] = drivenForces({ setUp, regeneration, creep: 0 });
        const added = taken!.front + taken!.rear - base!.front - base!.rear;
        expect(added).toBeCloseTo(regeneration * setUp.car.mass * standardGravity, 5);
      }),
      runs,
    );
  });

  it('changes nothing where it is nothing', () => {
    fc.assert(
      fc.property(anySetUp, anyRoad, (setUp, road) => {
        const none = { front: 0, rear: 0 };
        expect(lockOrder({ setUp, road, driven: none })).toEqual(lockOrder({ setUp, road }));
        expect(balanceCurve({ setUp, points: 9, driven: none }).installed).toHaveLength(
          balanceCurve({ setUp, points: 9 }).installed.length,
        );
      }),
      runs,
    );
  });

  it('makes the axle that it drags lock earlier under the same foot', () => {
    fc.assert(
      fc.property(anySetUp, anyRoad, evenly(100, 3000), (setUp, road, rear) => {
        const before = lockOrder({ setUp, road }).rear;
        const after = lockOrder({ setUp, road, driven: { front: 0, rear } }).rear;
        if (before === null || after === null) {
          expect(before).toBeNull(); // more drag never frees an axle
          return;
        }
        expect(after.pedalForce).toBeLessThanOrEqual(before.pedalForce + 1e-9);
      }),
      runs,
    );
  });

  it('locks the rear by itself on ice where it is strong enough', () => {
    const road = { ...exampleRoad, surfaceFactor: 0.05 };
    const order = lockOrder({ setUp: exampleSetUp, road, driven: { front: 0, rear: 1500 } });
    expect(order.first).toBe('rear');
    expect(order.at?.pedalForce).toBe(0);
  });

  it('can break the rule of Annex 5 that the brakes alone keep', () => {
    const setUp = exampleSetUp;
    const [, driven] = drivenForces({ setUp, regeneration: 0.25, creep: 0 });
    expect(annexFiveVerdict({ setUp }).rearBelowFront).toBe(true);
    expect(annexFiveVerdict({ setUp, driven: driven! }).rearBelowFront).toBe(false);
  });
});

describe('the limit line of Annex 5', () => {
  it('is the least braking rate read the other way round', () => {
    fc.assert(
      fc.property(evenly(0.2, 0.8), (k) => {
        expect(mostAdhesionAllowed(leastBrakingRate(k))).toBeCloseTo(k, 12);
      }),
      runs,
    );
  });
});
