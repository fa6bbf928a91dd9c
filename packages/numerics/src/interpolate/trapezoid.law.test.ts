import { expect, test } from 'vitest';
import { trapezoid } from './trapezoid.ts';

function errorWith(steps: number): number {
  const times = Array.from({ length: steps + 1 }, (_, i) => i / steps);
  return Math.abs(
    trapezoid(
      times,
      times.map((t) => Math.exp(t)),
    ) -
      (Math.E - 1),
  );
}

test('the error falls with the square of the step on a smooth curve', () => {
  for (const steps of [8, 16, 32, 64]) {
    expect(Math.log2(errorWith(steps) / errorWith(2 * steps))).toBeCloseTo(2, 2);
  }
});
