import { requireRange } from '@standstill/numerics';

/** A test whose longest allowed distance is S = a V + b V², V in km/h. */
export type DistanceTest =
  | 'fmvss135-cold'
  | 'fmvss135-antilock-failed'
  | 'fmvss135-circuit-failed'
  | 'r13h-type-0-disconnected'
  | 'r13h-type-0-connected'
  | 'r13h-type-1-hot';

interface DistanceRule {
  /** m per km/h. */
  readonly linear: number;
  /** m per (km/h)². */
  readonly squared: number;
}

const rules: Readonly<Record<DistanceTest, DistanceRule>> = {
  'fmvss135-cold': { linear: 0.1, squared: 0.006 },
  'fmvss135-antilock-failed': { linear: 0.1, squared: 0.0075 },
  'fmvss135-circuit-failed': { linear: 0.1, squared: 0.0158 },
  'r13h-type-0-disconnected': { linear: 0.1, squared: 0.006 },
  'r13h-type-0-connected': { linear: 0.1, squared: 0.0067 },
  'r13h-type-1-hot': { linear: 0.1, squared: 0.008 },
};

/**
 * Answers the longest distance that a regulation's brake test allows from a speed; a yardstick, not a type approval.
 *
 * Equation: S = a V + b V², V in km/h, S in m.
 * Assumes: the test's own conditions (load, temperature, pedal force) are met; a public road law may ask other figures.
 * Valid: 10 to 160 km/h.
 *
 * @param test - which test
 * @param speed - v, speed at the first touch, m/s
 * @returns m, longest allowed stopping distance
 * @throws OutOfRangeError where the speed is outside
 * Source: [fmvss-135], [un-r13h]
 * @example
 * regulationDistance('fmvss135-cold', 27.7777778) // => 70.0
 */
export function regulationDistance(test: DistanceTest, speed: number): number {
  const perHour = 3.6 * requireRange('speed', speed, 'm/s', 10 / 3.6, 161 / 3.6);
  const { linear, squared } = rules[test];
  return perHour * (linear + squared * perHour);
}
