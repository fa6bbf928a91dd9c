import { UnsolvedStopError } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';

/**
 * The answer of one draw, or none: a corner of the spreads may lie outside what the formulas hold for, and a stop that
 * was not solved is left out rather than answered with what it is not. Whoever calls this counts the answers.
 *
 * @param answer - computes the answer
 * @returns the answer; null where there is none
 */
export function orNone<T>(answer: () => T): T | null {
  try {
    return answer();
  } catch (error) {
    if (error instanceof OutOfRangeError || error instanceof UnsolvedStopError) return null;
    throw error;
  }
}
