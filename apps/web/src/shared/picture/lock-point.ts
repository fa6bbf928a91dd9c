import type { BalanceResult } from '@standstill/workshop';

export type ForcePoint = BalanceResult['installed'][number];

/** Where on the installed line the first axle locks; null where the foot can't lock it. */
export function lockPoint({
  installed,
  lockDeceleration_g: lock,
}: BalanceResult): { front: number; rear: number } | null {
  if (lock === null) return null;
  const after = installed.findIndex((point) => point.deceleration_g >= lock.value);
  const to = installed[after];
  const from = installed[after - 1];
  if (!to) return null;
  if (!from) return { front: to.frontForceOverWeight, rear: to.rearForceOverWeight };
  const share = (lock.value - from.deceleration_g) / (to.deceleration_g - from.deceleration_g);
  const between = (a: number, b: number): number => a + share * (b - a);
  return {
    front: between(from.frontForceOverWeight, to.frontForceOverWeight),
    rear: between(from.rearForceOverWeight, to.rearForceOverWeight),
  };
}
