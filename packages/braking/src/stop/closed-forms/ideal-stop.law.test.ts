import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardGravity } from '../../load/standard-gravity.ts';
import { idealStop } from './ideal-stop.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyIdeal = fc.record({
  speed: between(1, 100),
  friction: between(0.05, 2),
  dragOverMass: between(0, 0.01),
});
const runs = { numRuns: 500 };

/** Simpson's rule over v of v dv / (μ g + c v²) and of dv / (μ g + c v²): another road to the same stop. */
function byIntegral(speed: number, friction: number, dragOverMass: number): readonly [number, number] {
  const panels = 400;
  let distance = 0;
  let time = 0;
  for (let node = 0; node <= panels; node += 1) {
    const v = (speed * node) / panels;
    const weight = node === 0 || node === panels ? 1 : node % 2 === 1 ? 4 : 2;
    const slowing = friction * standardGravity + dragOverMass * v * v;
    distance += (weight * v) / slowing;
    time += weight / slowing;
  }
  const third = speed / panels / 3;
  return [third * distance, third * time];
}

describe('the ideal stop', () => {
  it('is the integral of v dv over the deceleration, with and without drag', () => {
    fc.assert(
      fc.property(anyIdeal, ({ speed, friction, dragOverMass }) => {
        const { distance, time } = idealStop({ speed, friction, dragOverMass });
        const [wantedDistance, wantedTime] = byIntegral(speed, friction, dragOverMass);
        expect(distance / wantedDistance).toBeCloseTo(1, 7);
        expect(time / wantedTime).toBeCloseTo(1, 7);
      }),
      runs,
    );
  });

  it('without drag is v² / (2 μ g), and drag only shortens it', () => {
    fc.assert(
      fc.property(anyIdeal, ({ speed, friction, dragOverMass }) => {
        const plain = idealStop({ speed, friction });
        expect(plain.distance / (speed ** 2 / (2 * friction * standardGravity))).toBeCloseTo(1, 12);
        const dragged = idealStop({ speed, friction, dragOverMass });
        expect(dragged.distance).toBeLessThanOrEqual(plain.distance * (1 + 1e-12));
        expect(dragged.time).toBeLessThanOrEqual(plain.time * (1 + 1e-12));
      }),
      runs,
    );
  });

  it('grows with speed and falls with friction', () => {
    fc.assert(
      fc.property(anyIdeal, between(1.01, 1.5), ({ speed, friction, dragOverMass }, factor) => {
        const { distance } = idealStop({ speed, friction, dragOverMass });
        expect(idealStop({ speed: factor * speed, friction, dragOverMass }).distance).toBeGreaterThan(
          distance,
        );
        expect(idealStop({ speed, friction: factor * friction, dragOverMass }).distance).toBeLessThan(
          distance,
        );
      }),
      runs,
    );
  });
});
