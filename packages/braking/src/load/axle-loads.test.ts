import { OutOfRangeError } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { axleLoads } from './axle-loads.ts';

const { car } = exampleSetUp;
const level = { car, deceleration: 0, speed: 0, road: exampleRoad };

/** Front share of the load of the car standing on a slope. */
function share(grade: number): number {
  const { front, rear } = axleLoads({ ...level, road: { ...exampleRoad, grade } });
  return front / (front + rear);
}

describe('axleLoads', () => {
  it('loads the front less uphill and more downhill', () => {
    // Standing on a slope of 20 % the share moves by grade × h / L.
    expect(share(0.2)).toBeCloseTo(0.56 - 0.2 * 0.2, 12);
    expect(share(-0.2)).toBeCloseTo(0.56 + 0.2 * 0.2, 12);
  });

  it('takes lift off each axle by its own area', () => {
    const fast = axleLoads({ ...level, speed: 50 });
    const still = axleLoads(level);
    expect(still.front - fast.front).toBeCloseTo(0.5 * 1.2 * 2500 * 0.05, 9);
    expect(still.rear - fast.rear).toBeCloseTo(0.5 * 1.2 * 2500 * 0.08, 9);
  });

  it('puts all load on the front and says so where the rear wheels would leave the road', () => {
    const loads = axleLoads({ ...level, deceleration: 30 });
    expect(loads).toMatchObject({ rear: 0, lifted: 'rear' });
  });

  it.each([
    ['mass', { mass: Number.NaN }],
    ['wheelbase', { wheelbase: 0 }],
    ['front share of static load', { frontLoadShare: 2 }],
    ['center of gravity height', { centerOfGravityHeight: -0.1 }],
  ])('refuses an impossible %s by name', (quantity, wrong) => {
    expect(() => axleLoads({ ...level, car: { ...car, ...wrong } })).toThrow(OutOfRangeError);
    expect(() => axleLoads({ ...level, car: { ...car, ...wrong } })).toThrow(quantity);
  });

  it('refuses a car that its lift would carry away', () => {
    expect(() => axleLoads({ ...level, speed: 150, car: { ...car, frontLiftArea: 20 } })).toThrow(
      'weight less lift',
    );
  });
});
