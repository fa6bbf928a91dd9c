import { mean } from '@standstill/numerics';
import { figures, placeOf } from '../figure.ts';
import type { MeasuredStops } from './measured-stops.ts';

/** The means of a set's figures with how sure they are: a multivariate t distribution. */
export interface MeanOfStops {
  /** Which figures. */
  readonly places: readonly number[];
  readonly means: Float64Array;
  /** Scale matrix, row by row, products of the figures' units. */
  readonly scale: Float64Array;
  readonly degreesOfFreedom: number;
}

/** One standard deviation of a stop about the mean of its set, as a share of the value (common practice). */
const usualScatter = [0.02, 0.02, 0.15, 0.025, 0.04] as const;
/** Correlation of distance and developed deceleration from stop to stop (assumed). */
const usualCorrelation = -0.7;
/** One standard error that all stops share, as a share of the value: what instrument and definition are off (assumed). */
const sharedShare = [0.001, 0.003, 0, 0.02, 0.03] as const;
/** s, between the build-up as a logger fits it and as the model has it (assumed). */
const buildUpError = 0.02;
/** s, of a start that is told by the onset of the deceleration (assumed). */
const onsetError = 0.02;

/**
 * Answers how well a set of stops knows the means of its figures.
 *
 * Equation: posterior of the mean under an inverse Wishart prior of the scatter, centered on what stops usually scatter,
 * with p + 2 degrees of freedom: t with ν = n + 2 and the scale (Ψ + Σ(x − x̄)(x − x̄)ᵀ) / (n ν); to the scale comes what
 * all stops share (delay δ: v δ in the distance and δ in the build-up, together); ν then by the share that the scatter has.
 * Assumes: stops scatter independently and about normally; shared errors are normal.
 *
 * @param set - stops that count, one at least
 * @param speed - m/s, nominal
 * @returns means and scale, SI
 * Source: [gelman-bda]
 */
export function meanOfStops(set: MeasuredStops, speed: number): MeanOfStops {
  const { places, rows } = set;
  const size = places.length;
  const means = Float64Array.from(places, (_, j) => mean(rows.map((row) => row[j]!)));
  const dof = rows.length + 2;
  const scatter = usualSquares(places, means);
  for (const row of rows)
    for (let i = 0; i < size; i += 1)
      for (let j = 0; j < size; j += 1)
        scatter[i * size + j]! += (row[i]! - means[i]!) * (row[j]! - means[j]!);
  const shared = sharedSquares(set, means, speed);
  const scale = Float64Array.from(scatter, (square, at) => square / (rows.length * dof) + shared[at]!);
  // The tails are those of the figure that owes most of its error to the scatter.
  const least = Math.min(
    ...means.map((_, j) => scale[j * (size + 1)]! / (scatter[j * (size + 1)]! / (rows.length * dof))),
  );
  return { places, means, scale, degreesOfFreedom: dof * least ** 2 };
}

function usualSquares(places: readonly number[], means: Float64Array): Float64Array {
  const spreads = places.map((place, j) => usualScatter[place]! * means[j]!);
  return Float64Array.from({ length: places.length ** 2 }, (_, at) => {
    const [i, j] = [Math.floor(at / places.length), at % places.length];
    if (i === j) return spreads[i]! ** 2;
    const both = new Set([places[i], places[j]]);
    const together = both.has(placeOf.distance) && both.has(placeOf.developed);
    return together ? usualCorrelation * spreads[i]! * spreads[j]! : 0;
  });
}

function sharedSquares(
  { places, startsAtOnset, delayError }: MeasuredStops,
  means: Float64Array,
  speed: number,
): Float64Array {
  const start = startsAtOnset ? Math.hypot(delayError, onsetError) : delayError;
  const byStart = figures.map(() => 0);
  byStart[placeOf.distance] = start * speed;
  byStart[placeOf.buildUp] = startsAtOnset ? 0 : start;
  return Float64Array.from({ length: places.length ** 2 }, (_, at) => {
    const [i, j] = [Math.floor(at / places.length), at % places.length];
    const together = byStart[places[i]!]! * byStart[places[j]!]!;
    if (i !== j) return together;
    const fixed = places[i] === placeOf.buildUp ? buildUpError : 0;
    return together + fixed ** 2 + (sharedShare[places[i]!]! * means[i]!) ** 2;
  });
}
