import { requireRange } from '@standstill/numerics';

const gravity = 9.80665;

/** One measured stop and what it is to be corrected to. */
export interface CorrectionInput {
  /** S, m, as driven. */
  readonly distance: number;
  /** V, m/s, at the start. */
  readonly entrySpeed: number;
  /** V0, m/s. */
  readonly nominalSpeed: number;
  /** Rise over run in the direction of travel, uphill positive; level where absent. */
  readonly grade?: number;
}

/**
 * The distance that a stop would have taken from the nominal speed and on level ground.
 *
 * Equation: S0 = S (V0/V)² a / (a - g sin α), a = V²/(2 S) as driven, tan α = grade
 * Assumes: the distance grows with the square of the speed. The part covered before the brakes bite grows only with
 * the speed, so the result is a little short where V > V0 and a little long where V < V0 (`squaredRatioBias`).
 * Valid: entry speed within a few percent of the nominal speed; grades that are small against the deceleration.
 *
 * @param input - what was measured
 * @returns S0, m
 * @throws OutOfRangeError where a speed is not above zero or the grade takes up the whole deceleration
 * Source: [sae-j299], [iso-21994]
 * @example
 * correctedDistance({ distance: 43, entrySpeed: 101.5 / 3.6, nominalSpeed: 100 / 3.6 }) // => 41.7385
 */
export function correctedDistance({
  distance,
  entrySpeed,
  nominalSpeed,
  grade = 0,
}: CorrectionInput): number {
  requireRange('stopping distance', distance, 'm', Number.MIN_VALUE, 10_000);
  requireRange('entry speed', entrySpeed, 'm/s', Number.MIN_VALUE, 200);
  requireRange('nominal speed', nominalSpeed, 'm/s', Number.MIN_VALUE, 200);
  const deceleration = (entrySpeed * entrySpeed) / (2 * distance);
  const byGrade = gravity * Math.sin(Math.atan(grade));
  const onLevel = requireRange('deceleration without the grade', deceleration - byGrade, 'm/s²', 1e-3, 100);
  return (distance * (nominalSpeed / entrySpeed) ** 2 * deceleration) / onLevel;
}
