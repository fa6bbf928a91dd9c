import { describe, expect, it } from 'vitest';
import { standardGravity } from '../load/standard-gravity.ts';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { decelerationUnder } from './deceleration-under.ts';

const setUp = { ...exampleSetUp, car: { ...exampleSetUp.car, rollingResistance: 0 } };

/** m/s² under 6000 N on a grade. */
function on(grade: number): number {
  return decelerationUnder({ setUp, road: { ...exampleRoad, grade } }, 6000);
}

describe('decelerationUnder', () => {
  it('adds the slope uphill and takes it away downhill', () => {
    const alongSlope = standardGravity * Math.sin(Math.atan(0.1));
    expect(on(0)).toBeCloseTo(5, 12);
    expect(on(0.1)).toBeCloseTo(5 + alongSlope, 12);
    expect(on(-0.1)).toBeCloseTo(5 - alongSlope, 12);
  });

  it('adds drag at speed and rolling resistance of what the lift leaves on the road', () => {
    const braking = { setUp: exampleSetUp, road: exampleRoad, speed: 40 };
    const airPressure = 0.5 * 1.2 * 40 ** 2;
    const load = 1200 * standardGravity - airPressure * (0.05 + 0.08);
    expect(decelerationUnder(braking, 0)).toBeCloseTo((airPressure * 0.65 + 0.012 * load) / 1200, 12);
  });
});
