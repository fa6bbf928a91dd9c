import { choleskyRoot, choleskySolve } from '@standstill/numerics';
import type { MeanOfStops } from '../measured/mean-of-stops.ts';

/** How well a model's figures agree with measured means. */
export interface StopLikelihood {
  readonly means: MeanOfStops;
  /** (x − x̄)ᵀ S⁻¹ (x − x̄), 1; NaN where the model has no answer. */
  readonly distance: (answer: Float64Array, place: number) => number;
  /** Logarithm of the likelihood of such figures, up to a constant. */
  readonly logarithm: (answer: Float64Array, place: number) => number;
}

/**
 * Answers how likely measured means are for figures of the model.
 *
 * Equation: ln L = −(ν + p)/2 ln(1 + (x − x̄)ᵀ S⁻¹ (x − x̄) / ν)
 *
 * @param means - measured means with scale and degrees of freedom
 * @returns the functions; each takes an answer of the model from `place` of an array on
 */
export function stopLikelihood(means: MeanOfStops): StopLikelihood {
  const { places, degreesOfFreedom } = means;
  const size = places.length;
  const root = choleskyRoot(means.scale, size);
  const off = new Float64Array(size);
  const distance = (answer: Float64Array, place: number): number => {
    for (let j = 0; j < size; j += 1) off[j] = answer[place + places[j]!]! - means.means[j]!;
    const solved = choleskySolve(root, off);
    let sum = 0;
    for (let j = 0; j < size; j += 1) sum += off[j]! * solved[j]!;
    return sum;
  };
  const logarithm = (answer: Float64Array, place: number): number => {
    const squared = distance(answer, place);
    return (-(degreesOfFreedom + size) / 2) * Math.log1p(squared / degreesOfFreedom);
  };
  return { means, distance, logarithm };
}
