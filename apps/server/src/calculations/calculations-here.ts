import { reportLog } from '@standstill/workshop';
import { calculateComparison } from './calculate-comparison.ts';
import { calculateLimits } from './calculate-limits.ts';
import { calculatePedal } from './calculate-pedal.ts';
import { calculatePrediction } from './calculate-prediction.ts';
import type { Calculations } from './calculations.ts';

/**
 * Calculates in this thread, one thing after the other: for tests and for programs that serve nobody else meanwhile.
 *
 * @returns the calculations
 */
export function calculationsHere(): Calculations {
  return {
    predict: async (task) => calculatePrediction(task),
    limits: async (task) => calculateLimits(task),
    pedal: async (task) => calculatePedal(task),
    reportLog: async ({ file, options }) => reportLog(file, options),
    compare: async (task) => calculateComparison(task),
    close: () => Promise.resolve(),
  };
}
