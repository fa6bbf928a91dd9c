import { requireRange } from '@standstill/numerics';
import { boosterAssist } from '../foot-to-pressure/booster-assist.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { rodForce } from '../foot-to-pressure/rod-force.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { pedalTravel } from '../travel/pedal-travel.ts';

export interface PedalCurveInput {
  readonly setUp: SetUp;
  /** N at the pedal pad, end of the curve. */
  readonly greatestForce: number;
  /** How many points. */
  readonly count: number;
  /** n of the trapped air, 1 slow to 1.4 fast; 1 where not given. */
  readonly airExponent?: number;
}

/** Force, travel and pressures in step; index by index one push. */
export interface PedalCurve {
  /** N at the pedal pad, ascending from zero. */
  readonly force: Float64Array;
  /** m at the pedal pad that the pressure asks for, also where the pedal does not have it. */
  readonly travel: Float64Array;
  /** Pa. */
  readonly frontPressure: Float64Array;
  /** Pa. */
  readonly rearPressure: Float64Array;
  /** m left at the master cylinder; negative where it bottoms. */
  readonly strokeReserve: Float64Array;
  /** N at the pedal pad where the booster has given all it has; Infinity where it never does, or there is none. */
  readonly runOutForce: number;
}

/**
 * Answers the whole push from first touch to a force: how far the pedal goes and what pressure it makes.
 *
 * Equation: `pedalTravel` and `linePressures` at equal steps of force, and at the booster's run-out in place of the step
 * next to it, so that the knee is on the curve.
 * Assumes: as `pedalTravel`; the pedal is not stopped at the floor.
 * Valid: 3 to 10,000 points, force up to 5000 N.
 *
 * @param input - set-up; greatest force, N; count of points; n, exponent of the trapped air, 1
 * @returns force, N; travel, m; pressures, Pa; stroke left, m; force at run-out, N
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * pedalCurve({ setUp: exampleSetUp, greatestForce: 500, count: 26 }).runOutForce // => 226.25
 */
export function pedalCurve({ setUp, greatestForce, count, airExponent }: PedalCurveInput): PedalCurve {
  requireRange('points of the curve', count, '', 3, 10_000);
  requireRange('pedal force', greatestForce, 'N', 1, 5000);
  const runOutForce = runOut(setUp);
  const force = forcesWithKnee(greatestForce, count, runOutForce);
  const curve = {
    force,
    travel: new Float64Array(count),
    frontPressure: new Float64Array(count),
    rearPressure: new Float64Array(count),
    strokeReserve: new Float64Array(count),
    runOutForce,
  };
  force.forEach((pedalForce, index) => {
    const { travel, strokeReserve } = pedalTravel({ setUp, pedalForce, airExponent });
    const { front, rear } = linePressures({ setUp, pedalForce });
    curve.travel[index] = travel;
    curve.strokeReserve[index] = strokeReserve;
    curve.frontPressure[index] = front;
    curve.rearPressure[index] = rear;
  });
  return curve;
}

/** N at the pedal pad. */
function runOut(setUp: SetUp): number {
  if (setUp.booster.kind === 'none') return Infinity;
  const { start, slope, limit } = boosterAssist(setUp.booster);
  if (start >= limit) return 0;
  const knee = slope > 0 ? (limit - start) / slope : Infinity;
  return knee / rodForce({ pedal: setUp.pedal, force: 1 });
}

function forcesWithKnee(greatest: number, count: number, knee: number): Float64Array {
  const step = greatest / (count - 1);
  const force = Float64Array.from({ length: count }, (_, index) => index * step);
  force[count - 1] = greatest;
  const nearest = Math.round(knee / step);
  if (nearest > 0 && nearest < count - 1) force[nearest] = knee;
  return force;
}
