import { requireRange } from '@standstill/numerics';

export interface RepeatedStopsLumpedInput {
  /** ΔT, K, rise in one stop. */
  readonly risePerStop: number;
  /** b, 1/s: share of its excess over the air that the rotor loses per second. */
  readonly coolingRate: number;
  /** t, s from stop to stop. */
  readonly interval: number;
  /** n, number of the stop, 1 for the first. */
  readonly stops: number;
}

/**
 * Answers how far above the air a lumped rotor is right after the n-th of equal stops.
 *
 * Equation: T_n − T_a = ΔT (1 − e^(−n b t)) / (1 − e^(−b t)); without cooling n ΔT.
 * Assumes: one temperature, every stop puts in the same heat at once, cooling in proportion to the excess.
 * Valid: any number of stops; `stops: Infinity` answers the limit.
 *
 * @param input - ΔT, rise in one stop, K; b, cooling rate, 1/s; t, interval, s; n, number of the stop, 1
 * @returns K above the air right after stop n
 * @throws OutOfRangeError where an input cannot be
 * Source: [newcomb-spurr], [limpert]
 * @example
 * repeatedStopsLumped({ risePerStop: 60, coolingRate: 0.0025, interval: 45, stops: 15 }) // => 459.585
 */
export function repeatedStopsLumped(input: RepeatedStopsLumpedInput): number {
  const rise = requireRange('rise in one stop', input.risePerStop, 'K', 0, 5000);
  const rate = requireRange('cooling rate', input.coolingRate, '1/s', 0, 10);
  const interval = requireRange('interval', input.interval, 's', 0, 1e6);
  const stops = requireRange('number of the stop', input.stops, '', 1, Infinity);
  const exponent = rate * interval;
  if (exponent < 1e-300) return rise * stops;
  return (rise * Math.expm1(-stops * exponent)) / Math.expm1(-exponent);
}
