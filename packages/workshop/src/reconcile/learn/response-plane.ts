import { leastSquares } from '@standstill/numerics';
import type { Ensemble } from './ensemble.ts';

/** Straight-line answers of the model near where its draws are. */
export interface ResponsePlane {
  /** Which numbers act. */
  readonly acting: readonly number[];
  /** Answer at the middle of all numbers, one a figure, SI. */
  readonly middle: Float64Array;
  /** SI a spread: figure after figure, one number for each that acts. */
  readonly slopes: Float64Array;
  /** One standard deviation of the model about the plane, one a figure, SI. */
  readonly residuals: Float64Array;
}

/**
 * Fits a plane to the model's answers, draw by draw with its weight.
 *
 * Equation: f ≈ c + Σ h_k z_k over the numbers that act, by `leastSquares` of rows times √w
 *
 * @param ensemble - draws with their answers; a draw without an answer must have the weight 0
 * @param size - numbers in an answer
 * @param places - of the figures in an answer
 * @param acting - which numbers act
 * @param weights - one a draw, any common size
 * @returns the plane
 */
export function responsePlane(
  { draws, departures, answers }: Ensemble,
  size: number,
  places: readonly number[],
  acting: readonly number[],
  weights: Float64Array,
): ResponsePlane {
  const numbers = departures.length / draws;
  const most = weights.reduce((greatest, weight) => Math.max(greatest, weight), 0);
  const rows = Array.from({ length: draws }, (_, i) => i).filter((i) => weights[i]! > 1e-9 * most);
  const roots = rows.map((i) => Math.sqrt(weights[i]! / most));
  const columns = [
    Float64Array.from(roots),
    ...acting.map((k) => Float64Array.from(rows, (i, at) => roots[at]! * departures[i * numbers + k]!)),
  ];
  const count = roots.reduce((sum, root) => sum + root * root, 0);
  const fits = places.map((place) => {
    const right = Float64Array.from(rows, (i, at) => roots[at]! * answers[i * size + place]!);
    return leastSquares(columns, right);
  });
  return {
    acting,
    middle: Float64Array.from(fits, ({ coefficients }) => coefficients[0]!),
    slopes: Float64Array.from(fits.flatMap(({ coefficients }) => [...coefficients.subarray(1)])),
    residuals: Float64Array.from(
      fits,
      ({ residualStandardDeviation: s, degreesOfFreedom }) => s * Math.sqrt(degreesOfFreedom / count),
    ),
  };
}
