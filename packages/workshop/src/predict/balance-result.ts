import { balanceCurve } from '@standstill/braking';
import type { BalancePoint, LockOrder } from '@standstill/braking';
import type { BalanceResult } from '../results/prediction.ts';
import type { Estimate } from '../results/estimate.ts';
import type { Settled } from '../settle/settle.ts';

interface BalanceResultInput {
  readonly settled: Settled;
  readonly order: LockOrder;
  readonly lockDeceleration: Estimate | null;
  /** 1, share of the draws in which the rear axle locks first. */
  readonly rearFirstShare: number;
}

/** The picture of the balance and what it says about who locks first. */
export function balanceResult({
  settled,
  order,
  lockDeceleration,
  rearFirstShare,
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
  };
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
