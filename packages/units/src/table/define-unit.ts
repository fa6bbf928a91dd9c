import type { Unit } from './unit.ts';

/**
 * Writes one row of the unit table for a unit whose zero is the SI zero.
 *
 * @param symbol - how it is printed
 * @param times - SI value of the unit times `over`
 * @param over - divisor, so that decimal fractions stay exact
 * @param spellings - other ways to write it
 * @returns the row
 */
export function defineUnit(symbol: string, times: number, over: number, ...spellings: string[]): Unit {
  return { symbol, times, over, zero: 0, spellings };
}
