import { quickStop, stopBudget, stopWorkspace } from '@standstill/braking';
import type { StopInput, StopMarch } from '@standstill/braking';
import { intervalOf } from '../draws/interval-of.ts';
import { orNone } from '../draws/or-none.ts';
import { stopInputOf } from '../predict/evaluate.ts';
import type { LimitsBudget } from '../results/limits-report.ts';
import type { StopBudgetResult } from '../results/prediction.ts';
import type { Settled } from '../settle/settle.ts';

/** The budget of one set-up with its intervals, and how often the tires are what limits its stop. */
export interface BudgetOverDraws {
  readonly budget: LimitsBudget;
  /** Share of the draws in which the tires, not the brakes, are the limit of a stop; 0 to 1. */
  readonly tiresLimitShare: number;
}

interface BudgetColumns {
  readonly total: Float64Array;
  readonly ideal: Float64Array;
  readonly shares: readonly Float64Array[];
}

/**
 * Gives each line of a stop budget its interval: the budget is drawn up anew for every draw.
 *
 * Equation: `stopBudget` draw by draw, the intervals as `intervalOf`
 *
 * @param central - the budget with the central values
 * @param drawn - the set-up in each draw
 * @returns the budget with intervals, m
 */
export function budgetIntervals(central: StopBudgetResult, drawn: readonly Settled[]): BudgetOverDraws {
  const columns: BudgetColumns = {
    total: empty(drawn),
    ideal: empty(drawn),
    shares: central.shares.map(() => empty(drawn)),
  };
  const march = stopWorkspace();
  let [answered, byTires] = [0, 0];
  drawn.forEach((settled, row) => {
    const byWhat = drawUp(stopInputOf(settled), march, columns, row);
    if (byWhat === null) return;
    answered += 1;
    if (byWhat !== 'brake torque') byTires += 1;
  });
  const { ideal_m, total_m, shares, sentence } = central;
  return {
    budget: {
      ideal_m: intervalOf(ideal_m, columns.ideal),
      total_m: intervalOf(total_m, columns.total),
      shares: shares.map(({ effect, title, distance_m }, index) => ({
        effect,
        title,
        distance_m: intervalOf(distance_m, columns.shares[index]!),
      })),
      draws: answered,
      sentence,
    },
    tiresLimitShare: answered === 0 ? 0 : byTires / answered,
  };
}

function empty(drawn: readonly Settled[]): Float64Array {
  return new Float64Array(drawn.length).fill(NaN);
}

/** One draw's line in every column; what limits its stop, or null where there is no answer. */
function drawUp(input: StopInput, march: StopMarch, columns: BudgetColumns, row: number): string | null {
  return orNone(() => {
    const { distance, idealDistance, shares } = stopBudget(input);
    columns.total[row] = distance;
    columns.ideal[row] = idealDistance;
    shares.forEach((share, index) => (columns.shares[index]![row] = share.distance));
    return quickStop(input, march).limitedBy;
  });
}
