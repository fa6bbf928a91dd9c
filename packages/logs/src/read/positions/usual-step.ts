import type { Places } from './placed-rows.ts';

/** s; with positions further apart no speed between them says how a car slowed down. */
export const sparsestPositions = 1.5;
/** s; a longer silence counts as so much: a pause is no sparse record. */
const longestCounted = 20;

/**
 * How far apart in time the positions of a log usually are: half of the time lies between positions that are further
 * apart. (The median of the steps themselves would call a log dense that has bursts of positions and long silence.)
 *
 * @param places - the positions of a log
 * @returns s; infinite where there are fewer than two
 */
export function usualStep({ time }: Places): number {
  const steps: number[] = [];
  for (let i = 1; i < time.length; i += 1) steps.push(Math.min(longestCounted, time[i]! - time[i - 1]!));
  steps.sort((a, b) => a - b);
  const half = steps.reduce((sum, step) => sum + step, 0) / 2;
  let passed = 0;
  return steps.find((step) => (passed += step) >= half) ?? Infinity;
}
