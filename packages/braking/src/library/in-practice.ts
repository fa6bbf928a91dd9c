import type { ClassValue } from './class-value.ts';

/** A class value that the trade takes for granted, without a published figure behind it. */
export function inPractice(value: number, spread: number, note: string): ClassValue {
  return { value, spread, known: 'common practice', note };
}
