import { exampleSetUp } from '@standstill/braking';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadFacts, ladenFacts } from '../job/facts/laden-facts.ts';
import type { LadenCar, LadenFigure } from '../job/job.ts';
import { central } from './draw.ts';
import { settleLaden } from './settle-laden.ts';

const evenly = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((step) => min + ((max - min) * step) / 1_000_000);

function figure(of: LadenFigure['of'], key: keyof typeof ladenFacts, value: number): LadenFigure {
  const fact = of === 'car' ? ladenFacts[key] : loadFacts[key];
  const { low, high } = fact;
  return { of, known: { value, origin: 'assumed', spread: 0, path: `car.laden.${key}`, low, high, fact } };
}

function loaded(mass: number, share: number, height: number): LadenCar {
  return {
    mass: figure('load', 'mass', mass),
    frontLoadShare: figure('load', 'frontLoadShare', share),
    centerOfGravityHeight: figure('load', 'centerOfGravityHeight', height),
  };
}

const runs = { numRuns: 500 };
const { car } = exampleSetUp;

describe('a load put into a car', () => {
  it('adds up: mass, front axle load and first moment over the road', () => {
    fc.assert(
      fc.property(evenly(0, 600), evenly(0, 0.6), evenly(0.3, 1.2), (mass, share, height) => {
        const laden = settleLaden(loaded(mass, share, height), car, central);
        expect(laden.mass).toBeCloseTo(car.mass + mass, 9);
        expect(laden.mass * laden.frontLoadShare).toBeCloseTo(
          car.mass * car.frontLoadShare + mass * share,
          8,
        );
        const moment = car.mass * car.centerOfGravityHeight + mass * height;
        expect(laden.mass * laden.centerOfGravityHeight).toBeCloseTo(moment, 8);
      }),
      runs,
    );
  });

  it('one after the other is the same as both at once', () => {
    fc.assert(
      fc.property(evenly(1, 300), evenly(1, 300), evenly(0, 0.6), evenly(0.3, 1.2), (a, b, share, height) => {
        const first = settleLaden(loaded(a, share, height), car, central);
        const twice = settleLaden(loaded(b, share, height), first, central);
        const once = settleLaden(loaded(a + b, share, height), car, central);
        expect(twice.mass).toBeCloseTo(once.mass, 9);
        expect(twice.frontLoadShare).toBeCloseTo(once.frontLoadShare, 12);
        expect(twice.centerOfGravityHeight).toBeCloseTo(once.centerOfGravityHeight, 12);
      }),
      runs,
    );
  });

  it('that is stated as the whole car is taken as it is, and never makes the car lighter', () => {
    fc.assert(
      fc.property(evenly(400, 2500), evenly(0.3, 0.7), evenly(0.3, 0.9), (mass, share, height) => {
        const stated = {
          mass: figure('car', 'mass', mass),
          frontLoadShare: figure('car', 'frontLoadShare', share),
          centerOfGravityHeight: figure('car', 'centerOfGravityHeight', height),
        };
        const laden = settleLaden(stated, car, central);
        expect(laden).toMatchObject({ frontLoadShare: share, centerOfGravityHeight: height });
        expect(laden.mass).toBe(Math.max(car.mass, mass));
      }),
      runs,
    );
  });
});
