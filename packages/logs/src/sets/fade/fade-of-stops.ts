import { leastSquares, linearFit, tInterval, type LinearFit } from '@standstill/numerics';
import { countedDistances } from '../counted-distances.ts';
import type { IntervalValue, StopSet } from '../stop-set.ts';
import { withSharedError } from '../with-shared-error.ts';
import { fadeStops } from './fade-stops.ts';
import { fadeTemperatures } from './fade-temperatures.ts';
import type { FadeOfStops, FadeOptions, TooFewToFade } from './fade.ts';

/**
 * How distance and temperature go with the number of the stop: whether the brakes fade.
 *
 * Equation: line y = ȳ + b (n − n̄), b ± t s_b, ν = N − 2; growth b (n_last − n_first); in % of the line's first value y_f,
 * ratio ρ = y_l/y_f with s_ρ = s √((1 − ρ)²/N + ((n_l − n̄) + ρ (n̄ − n_f))²/Σ(n − n̄)²) / y_f; bend: c of
 * y = a + b (n − n̄) + c (n − n̄)², c ± t s_c, ν = N − 3
 * Assumes: errors independent, about normal, of one size. A distance that goes with temperature may as well go with the
 * tires' or the driver's: both rise together.
 * Valid: three stops that count; under four nothing is said of a bend, and with few a bend must be large to show.
 *
 * @param set - the stops in the order driven; what does not count keeps its number
 * @param options - nominal speed, m/s; definition of the distance
 * @returns the line through the distances with growth, bend and temperatures, m and °C; or that too few stops count
 * Source: [nist-handbook]
 */
export function fadeOfStops(set: StopSet, options: FadeOptions): FadeOfStops | TooFewToFade {
  const counted = countedDistances(set, options.definition, options.nominalSpeed);
  const { distances, indices, leftOut, sharedErrors } = counted;
  if (distances.length < 3) return { ok: false, code: 'too-few-to-fade', counted: distances.length, leftOut };
  const stops = fadeStops(set, counted, options);
  const numbers = indices.map((index) => index + 1);
  const line = linearFit(numbers, distances);
  const span = numbers[numbers.length - 1]! - numbers[0]!;
  const { slope, slopeInterval, slopeStandardError, degreesOfFreedom, residualStandardDeviation } = line;
  const curvature = curvatureOf(numbers, distances);
  return {
    ok: true,
    name: set.name,
    ...options,
    stops,
    counted: distances.length,
    slope: { value: slope, ...slopeInterval },
    slopeStandardError,
    degreesOfFreedom,
    growth: { value: slope * span, low: slopeInterval.low * span, high: slopeInterval.high * span },
    growthPercent: growthPercent(numbers, line, mean(sharedErrors)),
    residualStandardDeviation,
    curvature,
    bends: curvature !== null && (curvature.low > 0 || curvature.high < 0),
    temperatures: fadeTemperatures(stops),
  };
}

function growthPercent(numbers: readonly number[], line: LinearFit, sharedError: number): IntervalValue {
  const { slope, intercept, residualStandardDeviation: scatter, degreesOfFreedom } = line;
  const [first, last, middle] = [numbers[0]!, numbers[numbers.length - 1]!, mean(numbers)];
  const atFirst = intercept + slope * first;
  const ratio = (intercept + slope * last) / atFirst;
  const squares = numbers.reduce((sum, number) => sum + (number - middle) ** 2, 0);
  const reach = last - middle + ratio * (middle - first);
  const standardError =
    (scatter * Math.sqrt((1 - ratio) ** 2 / numbers.length + reach ** 2 / squares)) / Math.abs(atFirst);
  const value = ratio - 1;
  const own = { value, ...tInterval({ value, standardError, degreesOfFreedom }, 0.95) };
  const { low, high } = withSharedError(own, Math.abs(((1 - ratio) * sharedError) / atFirst));
  return { value: 100 * value, low: 100 * low, high: 100 * high };
}

function curvatureOf(numbers: readonly number[], distances: readonly number[]): IntervalValue | null {
  if (numbers.length < 4) return null;
  const middle = mean(numbers);
  const away = numbers.map((number) => number - middle);
  const columns = [away.map(() => 1), away, away.map((value) => value ** 2)];
  const { coefficients, standardErrors, degreesOfFreedom } = leastSquares(columns, distances);
  const value = coefficients[2]!;
  return { value, ...tInterval({ value, standardError: standardErrors[2]!, degreesOfFreedom }, 0.95) };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
