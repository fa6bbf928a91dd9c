import { reportLog } from '@standstill/workshop';
import { answerQuestion } from '../questions/answer-question.ts';
import { calculateComparison } from './calculate-comparison.ts';
import type { Calculations } from './calculations.ts';

/**
 * Calculates in this thread, one thing after the other: for tests and for programs that serve nobody else meanwhile.
 *
 * @returns the calculations
 */
export function calculationsHere(): Calculations {
  return {
    ask: async (task) => answerQuestion(task),
    reportLog: async ({ file, options }) => reportLog(file, options),
    compare: async (task) => calculateComparison(task),
    close: () => Promise.resolve(),
  };
}
