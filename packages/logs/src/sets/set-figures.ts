import { linearFit, meanInterval, spreadInterval, summarize } from '@standstill/numerics';
import type { CountedDistances } from './counted-distances.ts';
import { hiddenError } from './hidden-error.ts';
import type { IntervalValue, SetFigures } from './stop-set.ts';
import { warmUp } from './warm-up.ts';
import { withSharedError } from './with-shared-error.ts';

/**
 * Mean, spread, best, worst, trend and warm-up of a set of stops.
 *
 * Equation: mean x̄ ± √((t s/√n)² + (1.96 σ)²), σ the mean error that the stops share, with `hiddenError`
 * where they are too alike; spread by χ²; trend b ± t s_b of
 * the line through the distances against run number; warm-up as `warmUp`
 * Assumes: independent runs, about normal; a trend shows where they are not. The unknown delay between brake signal and
 * speed moves all stops of a logger alike, so that it does not average out.
 *
 * @param name - of the set
 * @param counted - at least two distances in m
 * @returns the figures, m
 * @throws OutOfRangeError for fewer than two distances
 * Source: [nist-handbook]
 */
export function setFigures(name: string, counted: CountedDistances): SetFigures {
  const { distances, runs, standardErrors, sharedErrors, leftOut, judged } = counted;
  const summary = summarize(distances);
  const { standardDeviation } = summary;
  const squares = standardErrors.reduce((sum, error) => sum + error * error, 0);
  const sharedError = sharedErrors.reduce((sum, error) => sum + error, 0) / distances.length;
  const measuringError = Math.sqrt(squares / distances.length);
  const hidden = hiddenError({ distances, standardDeviation, measuringError });
  return {
    name,
    distances,
    runs,
    leftOut,
    judged,
    mean: withSharedError({ value: summary.mean, ...meanInterval(summary) }, Math.hypot(sharedError, hidden)),
    sharedError,
    standardDeviation,
    standardDeviationInterval: spreadInterval({ standardDeviation, degreesOfFreedom: distances.length - 1 }),
    best: Math.min(...distances),
    worst: Math.max(...distances),
    trend: trendOf(runs, distances),
    warmUp: warmUp(runs, distances),
    measuringError,
  };
}

function trendOf(runs: readonly number[], distances: readonly number[]): IntervalValue | null {
  if (distances.length < 3) return null;
  const { slope, slopeInterval } = linearFit(runs, distances);
  return { value: slope, ...slopeInterval };
}
