import { leastSquares, tInterval } from '@standstill/numerics';
import type { IntervalValue } from './stop-set.ts';

/**
 * What the first run of a set lies over the line through the others: tires and brakes that were not warm yet, as far as
 * one run can tell.
 *
 * Equation: y = a + b r + w [r = 1], w ± t s_w, ν = n − 3
 * Assumes: the other runs lie on a straight line, errors independent, about normal, of one size.
 * Valid: with four runs one degree of freedom is left, so that the interval is very wide.
 *
 * @param runs - r, run numbers, 1
 * @param distances - y of each, m
 * @returns w, m; null under four runs or where run 1 is not among them
 */
export function warmUp(runs: readonly number[], distances: readonly number[]): IntervalValue | null {
  if (runs.length < 4 || runs[0] !== 1) return null;
  const columns = [runs.map(() => 1), runs, runs.map((run) => (run === 1 ? 1 : 0))];
  const { coefficients, standardErrors, degreesOfFreedom } = leastSquares(columns, distances);
  const value = coefficients[2]!;
  return { value, ...tInterval({ value, standardError: standardErrors[2]!, degreesOfFreedom }, 0.95) };
}
