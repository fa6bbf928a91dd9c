import type { FadeSetResult } from '@standstill/workshop';

/** The line through the distances of a set and how far off it may be, m by the number of the stop. */
export interface FadeLine {
  readonly first: number;
  readonly last: number;
  readonly at: (number: number) => { readonly value: number; readonly low: number; readonly high: number };
}

/**
 * The line that a set's slope belongs to, with its band.
 *
 * Equation: d(n) = mean d + b (n − mean n); half-width = h √S √(1/N + (n − mean n)²/S), with h the half-width of the
 * interval of b and S = Σ (n − mean n)²
 * Assumes: the slope is that of least squares with even weights, so that the line goes through the mean of both.
 *
 * @param set - its counted stops, m, and its slope, m a stop
 * @returns the line, m; null where the set has no slope
 */
export function fadeLine(set: FadeSetResult): FadeLine | null {
  const slope = set.slope_m_per_stop;
  const stops = set.stops.filter(({ counted }) => counted);
  if (slope === null || stops.length < 2) return null;
  const numbers = stops.map(({ number }) => number);
  const center = mean(numbers);
  const level = mean(stops.map(({ distance_m }) => distance_m));
  const spread = numbers.reduce((sum, number) => sum + (number - center) ** 2, 0);
  const half = (slope.high - slope.low) / 2;
  return {
    first: Math.min(...numbers),
    last: Math.max(...numbers),
    at: (number) => {
      const value = level + slope.value * (number - center);
      const reach = half * Math.sqrt(spread) * Math.sqrt(1 / stops.length + (number - center) ** 2 / spread);
      return { value, low: value - reach, high: value + reach };
    },
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
