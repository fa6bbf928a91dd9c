import { adhesionUse, balanceCurve, brakingEfficiency, standardGravity } from '@standstill/braking';
import type { BalancePoint, LockOrder } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import type { BalanceResult } from '../results/prediction.ts';
import type { Estimate } from '../results/estimate.ts';
import type { Settled } from '../settle/settle.ts';

interface BalanceResultInput {
  readonly settled: Settled;
  readonly order: LockOrder;
  readonly lockDeceleration: Estimate | null;
  /** 1, share of the draws in which the rear axle locks first. */
  readonly rearFirstShare: number;
  /** 1, the same at the temperatures of the repeated stops. */
  readonly rearFirstShareHot: number | null;
  /** First of the repeated stops with the rear first, central values. */
  readonly rearFirstFromStop: number | null;
}

/** The picture of the balance and what it says about who locks first. */
export function balanceResult({
  settled,
  order,
  lockDeceleration,
  rearFirstShare,
  rearFirstShareHot,
  rearFirstFromStop,
}: BalanceResultInput): BalanceResult {
  const { ideal, installed } = balanceCurve({
    setUp: settled.setUp,
    padTemperatures: { front: settled.startTemperature, rear: settled.startTemperature },
  });
  return {
    ideal: ideal.map(pointOf),
    installed: installed.map(pointOf),
    firstToLock: order.first,
    lockDeceleration_g: lockDeceleration,
    frontForceShare: (order.at ?? order.atStrongestFoot).frontForceShare,
    rearFirstShare,
    rearFirstShareHot,
    rearFirstFromStop,
    efficiencyAtLock: efficiencyAtLock(settled, order),
  };
}

/** How well front and rear match when the first axle locks: 1 where both use the same adhesion. */
function efficiencyAtLock({ setUp: { car } }: Settled, { at }: LockOrder): number | null {
  if (at === null || !(at.deceleration > 0)) return null;
  const force = at.deceleration * car.mass * standardGravity;
  const front = at.frontForceShare * force;
  try {
    return brakingEfficiency(adhesionUse({ car, frontForce: front, rearForce: force - front }));
  } catch (error) {
    if (error instanceof OutOfRangeError) return null; // beyond the deceleration at which the rear wheels lift
    throw error;
  }
}

function pointOf(point: BalancePoint): BalanceResult['ideal'][number] {
  const { deceleration, frontForce, rearForce, frontAdhesion, rearAdhesion } = point;
  return {
    deceleration_g: deceleration,
    frontForceOverWeight: frontForce,
    rearForceOverWeight: rearForce,
    frontAdhesion,
    rearAdhesion,
  };
}
