import { tTest } from '@standstill/numerics';
import type { IntervalValue } from '../stop-set.ts';
import type { FadeOfStops } from './fade.ts';

/** Two slopes of distance over stops set against each other. */
export interface SlopeDifference {
  /** m per stop, against minus set: negative where the second set fades less. */
  readonly difference: IntervalValue;
  /** 1. */
  readonly degreesOfFreedom: number;
  /** Of no difference, 0 to 1; NaN where nothing scatters and nothing differs. */
  readonly p: number;
}

/**
 * Whether a second set of stops fades otherwise than a first.
 *
 * Equation: b_2 − b_1 ± t √(s_b1² + s_b2²), ν = (s_b1² + s_b2²)² / (s_b1⁴/ν_1 + s_b2⁴/ν_2)
 * Assumes: as `fadeOfStops` in each; both driven by one schedule.
 * Valid: five stops in each; with four in one and ten in the other the 95 % interval holds 93 %.
 *
 * @param set - the first, m per stop
 * @param against - the second, m per stop
 * @returns the difference of the slopes, m per stop
 * Source: [satterthwaite-1946]
 */
export function slopeDifference(set: FadeOfStops, against: FadeOfStops): SlopeDifference {
  const first = set.slopeStandardError ** 2;
  const second = against.slopeStandardError ** 2;
  const parts = first ** 2 / set.degreesOfFreedom + second ** 2 / against.degreesOfFreedom;
  const degreesOfFreedom =
    parts > 0 ? (first + second) ** 2 / parts : set.degreesOfFreedom + against.degreesOfFreedom;
  const value = against.slope.value - set.slope.value;
  const test = tTest({ value, standardError: Math.sqrt(first + second), degreesOfFreedom }, 0.95);
  return { difference: { value, low: test.low, high: test.high }, degreesOfFreedom, p: test.p };
}
