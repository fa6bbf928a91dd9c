import { requireRange } from '@standstill/numerics';
import type { SetUp } from '../set-up/set-up.ts';
import type { BalancePoint } from './balance-point.ts';
import type { DrivenForces } from './driven-forces.ts';
import { idealBalance } from './ideal-balance.ts';
import { installedLine } from './installed-line.ts';
import { installedPoint } from './installed-point.ts';
import { liftOffDeceleration } from './lift-off-deceleration.ts';
import { usualPadTemperatures, type PadTemperatures } from './pad-temperatures.ts';

export interface BalanceCurve {
  /** Both axles use the same friction. */
  readonly ideal: readonly BalancePoint[];
  /** The brakes as fitted, as if nothing locked; ends where the strongest foot does. */
  readonly installed: readonly BalancePoint[];
}

export interface BalanceCurveInput {
  readonly setUp: SetUp;
  /** z at the end of both curves, 1; 1.2 where not given. */
  readonly greatestDeceleration?: number;
  /** Points from zero to there; 61 where not given. */
  readonly points?: number;
  readonly padTemperatures?: PadTemperatures;
  /** What the driven wheels do beside the brakes; nothing where not given. */
  readonly driven?: DrivenForces;
}

/**
 * Answers how the brakes share their force between the axles, beside the sharing that would use all grip.
 *
 * Equation: `idealBalance` and `adhesionUse` at equal steps of z; the installed line through valve and master cylinder.
 * Assumes: level road, no lift, drag or rolling resistance, ABS and EBD not acting, brakes at 100 °C where not given.
 * Valid: both curves end below the deceleration at which the rear wheels leave the road.
 *
 * @param input - set-up; greatest z, 1; number of points; interface temperatures of the pads, °C
 * @returns points of the ideal and of the installed curve: z, forces over weight and friction used, each 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [un-r13h]
 * @example
 * balanceCurve({ setUp: exampleSetUp, points: 13 }).installed.length // => 13
 */
export function balanceCurve(input: BalanceCurveInput): BalanceCurve {
  const { setUp, greatestDeceleration = 1.2, points = 61, padTemperatures = usualPadTemperatures } = input;
  requireRange('greatest deceleration over g', greatestDeceleration, '', 0.01, 5);
  requireRange('points of the balance curve', points, '', 2, 10_000);
  const end = Math.min(greatestDeceleration, 0.999 * liftOffDeceleration(setUp.car));
  const line = installedLine(setUp, padTemperatures);
  const ideal: BalancePoint[] = [];
  const installed: BalancePoint[] = [];
  for (let index = 0; index < points; index += 1) {
    const deceleration = (end * index) / (points - 1);
    ideal.push(idealPoint(setUp, deceleration));
    const point = installedPoint(setUp, line, deceleration, input.driven);
    if (point !== undefined) installed.push(point);
  }
  return { ideal, installed };
}

function idealPoint({ car }: SetUp, deceleration: number): BalancePoint {
  const { front, rear } = idealBalance({ car, deceleration });
  const adhesion = deceleration;
  return {
    deceleration,
    frontForce: front,
    rearForce: rear,
    frontAdhesion: adhesion,
    rearAdhesion: adhesion,
  };
}
