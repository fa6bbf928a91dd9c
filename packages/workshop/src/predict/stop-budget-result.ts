import { stopBudget } from '@standstill/braking';
import type { StopEffect } from '@standstill/braking';
import type { UnitSystem } from '@standstill/units';
import type { JobSetUp } from '../job/job.ts';
import type { StopBudgetResult } from '../results/prediction.ts';
import type { Settled } from '../settle/settle.ts';
import { budgetSentence } from './budget-sentence.ts';
import { stopInputOf } from './evaluate.ts';

const titles: Readonly<Record<StopEffect, string>> = {
  'build-up': 'Pressure build-up',
  torque: 'Brake torque short of the tires',
  balance: 'Front/rear balance',
  'lock control': 'ABS cycling',
  'load sensitivity': 'Load sensitivity of the tires',
  heat: 'Heat in the pads',
};

/** Where the distance of one set-up goes, with the central values. */
export function stopBudgetResult(
  { id, title }: JobSetUp,
  settled: Settled,
  units: UnitSystem,
): StopBudgetResult {
  const { distance, idealDistance, shares } = stopBudget(stopInputOf(settled));
  const budget = {
    id,
    ideal_m: idealDistance,
    total_m: distance,
    shares: shares.map(({ effect, distance: share }) => ({
      effect,
      title: titleOf(effect, settled),
      distance_m: share,
    })),
  };
  return { ...budget, sentence: budgetSentence({ budget, title, speed: settled.speed, units }) };
}

function titleOf(effect: StopEffect, { setUp }: Settled): string {
  if (effect === 'lock control' && setUp.antilock.kind === 'none') return 'Driver short of the lock limit';
  return titles[effect];
}
