import { choleskyRoot, choleskySolve, randomStream } from '@standstill/numerics';
import type { StopModel } from '../model/stop-model.ts';
import type { Learned } from './learn-from-stops.ts';

/** Whether measured stops fit the job within its spreads. */
export interface FitOfStops {
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
  /** Chance of stops that fit as badly or worse, were the job right within its spreads. */
  readonly p: number;
}

/**
 * Answers whether the stops fit the job within its stated spreads.
 *
 * Equation: χ² = (x̄ − m)ᵀ (C + S)⁻¹ (x̄ − m), m and C mean and covariance of the model's figures over draws from the job;
 * p the share of draws, each with errors of measuring of its own, that are as far out: no shape of χ² is assumed
 * Assumes: errors of measuring are normal with the variance of their t distribution.
 *
 * @param learned - draws from the job, and the measured means
 * @param model - that answered them
 * @param seed - of the errors
 * @returns χ², how many figures, and the chance
 * Source: [gelman-bda]
 */
export function fitOfStops({ byJob, likelihood }: Learned, model: StopModel, seed: number): FitOfStops {
  const { places, means, scale, degreesOfFreedom: dof } = likelihood.means;
  const size = places.length;
  const measuring = scale.map((square) => (square * dof) / (dof - 2));
  const rows = Array.from({ length: byJob.draws }, (_, i) =>
    Float64Array.from(places, (place) => byJob.answers[i * model.size + place]!),
  ).filter((row) => row.every(Number.isFinite));
  const middle = means.map((_, j) => rows.reduce((sum, row) => sum + row[j]!, 0) / rows.length);
  const whole = measuring.map((square, at) => {
    const [i, j] = [Math.floor(at / size), at % size];
    const sum = rows.reduce((total, row) => total + (row[i]! - middle[i]!) * (row[j]! - middle[j]!), 0);
    return square + sum / rows.length;
  });
  const root = choleskyRoot(whole, size);
  const noise = choleskyRoot(measuring, size);
  const away = (of: Float64Array): number => {
    const off = of.map((value, j) => value - middle[j]!);
    const solved = choleskySolve(root, off);
    return off.reduce((sum, value, j) => sum + value * solved[j]!, 0);
  };
  const chiSquared = away(means);
  const stream = randomStream(seed, 'fit of stops');
  let farther = 0;
  for (const row of rows) {
    const errors = Float64Array.from({ length: size }, () => stream.normal());
    const measured = row.map((value, j) => {
      let error = 0;
      for (let k = 0; k <= j; k += 1) error += noise[j * size + k]! * errors[k]!;
      return value + error;
    });
    if (away(measured) >= chiSquared) farther += 1;
  }
  return { chiSquared, degreesOfFreedom: size, p: (farther + 1) / (rows.length + 1) };
}
