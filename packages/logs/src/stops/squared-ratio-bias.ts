import { requireRange } from '@standstill/numerics';

/** A stop that begins with a delay and is then slowed steadily. */
export interface BiasInput {
  /** td, s, from the start of the distance until the deceleration, as a pure delay (half the build-up time counts). */
  readonly delay: number;
  /** a, m/s², after it. */
  readonly deceleration: number;
  /** V, m/s. */
  readonly entrySpeed: number;
  /** V0, m/s. */
  readonly nominalSpeed: number;
}

/**
 * By what share the correction with the squared ratio of speeds misses, because the distance covered during the delay
 * grows only with the speed itself.
 *
 * Equation: S(V) = td V + V²/(2 a); bias = S(V) (V0/V)² / S(V0) - 1
 * Valid: any speeds above zero.
 *
 * @param input - the stop
 * @returns the bias as a share; negative where the corrected distance comes out short
 * @throws OutOfRangeError where an input can't be
 * Source: [sae-j299], [iso-21994]
 * @example
 * squaredRatioBias({ delay: 0.36, deceleration: 6.43, entrySpeed: 102 / 3.6, nominalSpeed: 100 / 3.6 }) // => -0.00280111
 */
export function squaredRatioBias({ delay, deceleration, entrySpeed, nominalSpeed }: BiasInput): number {
  requireRange('delay', delay, 's', 0, 10);
  requireRange('deceleration', deceleration, 'm/s²', 1e-6, 100);
  requireRange('entry speed', entrySpeed, 'm/s', 1e-6, 200);
  requireRange('nominal speed', nominalSpeed, 'm/s', 1e-6, 200);
  const distance = (speed: number): number => delay * speed + speed ** 2 / (2 * deceleration);
  return (distance(entrySpeed) * (nominalSpeed / entrySpeed) ** 2) / distance(nominalSpeed) - 1;
}
