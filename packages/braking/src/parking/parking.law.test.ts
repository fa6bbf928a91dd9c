import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axleLoads } from '../load/axle-loads.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import { anyCar, anyTire } from '../set-up/any-set-up.testing.ts';
import { exampleRoad } from '../set-up/example-set-up.ts';
import { parkingHold } from './parking-hold.ts';
import { parkingTorque } from './parking-torque.ts';
import { slopePull } from './slope-pull.ts';
import { evenly } from '../set-up/evenly.testing.ts';

const runs = { numRuns: 500 };
const anyTorque = evenly(0, 3000);
const anyAxle = fc.constantFrom('front' as const, 'rear' as const);

describe('parking hold', () => {
  it('just balances the pull of the slope that the brake holds', () => {
    fc.assert(
      fc.property(anyCar, anyTire, anyTorque, anyAxle, (car, tire, torque, axle) => {
        const { byBrake } = parkingHold({ car, tire, torque, axle, surfaceFactor: 1 });
        if (byBrake > 0.99) return;
        expect(slopePull({ mass: car.mass, grade: byBrake })).toBeCloseTo(
          (2 * torque) / tire.rollingRadius,
          5,
        );
      }),
      runs,
    );
  });

  it('slides where the axle loads of the slope say so, both ways', () => {
    fc.assert(
      fc.property(anyCar, anyTire, anyAxle, (car, tire, axle) => {
        const calm = { ...car, frontLiftArea: 0, rearLiftArea: 0 };
        const { byTiresUphill, byTiresDownhill } = parkingHold({
          car: calm,
          tire,
          torque: 1e4,
          axle,
          surfaceFactor: 0.5,
        });
        for (const [grade, sign] of [
          [byTiresUphill, 1],
          [byTiresDownhill, -1],
        ] as const) {
          if (grade > 0.99) continue;
          const road = { ...exampleRoad, grade: sign * grade };
          const loads = axleLoads({ car: calm, deceleration: 0, speed: 0, road });
          if (loads.lifted !== 'none') continue;
          const pull = (calm.mass * standardGravity * grade) / Math.sqrt(1 + grade * grade);
          expect(pull / (0.5 * tire.peakFriction * loads[axle])).toBeCloseTo(1, 8);
        }
      }),
      runs,
    );
  });

  it('only grows with the force of the hand, in step', () => {
    fc.assert(
      fc.property(evenly(1, 900), (force) => {
        const brake = {
          kind: 'shoes',
          leverRatio: 7,
          cableEfficiency: 0.8,
          shoeLeverRatio: 4,
          brakeFactor: 3,
          drumRadius: 0.09,
        } as const;
        const torque = parkingTorque({ brake, force });
        expect(torque).toBeGreaterThan(0);
        expect(parkingTorque({ brake, force: 2 * force })).toBeCloseTo(2 * torque, 8);
      }),
      runs,
    );
  });
});
