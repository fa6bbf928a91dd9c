import { answerQuestion } from '../questions/answer-question.ts';
import { calculateComparison } from './calculate-comparison.ts';
import { calculateExplanation } from './calculate-explanation.ts';
import { calculateFade } from './calculate-fade.ts';
import { calculatePlan } from './calculate-plan.ts';
import type { Calculations } from './calculations.ts';
import { picturesOfLog, reportOfLog } from './report-of-log.ts';

/**
 * Calculates in this thread, one thing after the other: for tests and for programs that serve nobody else meanwhile.
 *
 * @returns the calculations
 */
export function calculationsHere(): Calculations {
  return {
    ask: async (task) => answerQuestion(task),
    reportLog: async (task) => reportOfLog(task),
    drawStops: async (task) => picturesOfLog(task),
    compare: async (task) => calculateComparison(task),
    fade: async (task) => calculateFade(task),
    plan: async (task) => calculatePlan(task),
    explain: async (task) => calculateExplanation(task),
    close: () => Promise.resolve(),
  };
}
