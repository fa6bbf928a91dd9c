import { downwardCrossing } from './downward-crossing.ts';
import type { SpeedRun } from './speed-run.ts';

/**
 * The mean fully developed deceleration of a stop, by distance between 0.8 and 0.1 of the entry speed.
 *
 * Equation: dm = (vb² - ve²) / (2 (se - sb)), vb = 0.8 v0, ve = 0.1 v0; with km/h and m the same is
 * (vb² - ve²) / (25.92 (se - sb))
 * Assumes: the first downward crossings, on straight lines between samples.
 *
 * @param stop - s and m/s from the start to rest
 * @param entrySpeed - v0, m/s
 * @returns m/s²; null where the speed does not cross both
 * Source: [un-r13]
 */
export function fullyDevelopedDeceleration(stop: SpeedRun, entrySpeed: number): number | null {
  const begin = downwardCrossing(stop, 0.8 * entrySpeed);
  const end = downwardCrossing(stop, 0.1 * entrySpeed);
  if (begin === null || end === null || !(end.distance > begin.distance)) return null;
  return (entrySpeed * entrySpeed * (0.64 - 0.01)) / (2 * (end.distance - begin.distance));
}
