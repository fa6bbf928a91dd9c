import type { SpeedRun } from './speed-run.ts';

/** Where a stop first falls through a speed. */
export interface Crossing {
  /** s. */
  readonly time: number;
  /** m from the start of the stop. */
  readonly distance: number;
}

/**
 * Finds where a stop first falls through a speed, on straight lines between samples.
 *
 * @param stop - s and m/s from the start to rest
 * @param level - m/s
 * @returns the place; null where the stop is never faster or never slower
 */
export function downwardCrossing({ time, speed }: SpeedRun, level: number): Crossing | null {
  let distance = 0;
  for (let i = 1; i < time.length; i += 1) {
    const step = time[i]! - time[i - 1]!;
    const [from, to] = [speed[i - 1]!, speed[i]!];
    if (from >= level && to < level) {
      const share = (from - level) / (from - to);
      const part = share * step;
      return { time: time[i - 1]! + part, distance: distance + (part * (from + level)) / 2 };
    }
    distance += (step * (from + to)) / 2;
  }
  return null;
}
