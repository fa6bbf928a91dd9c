import type { SpeedRun } from './speed-run.ts';

/** Index of the last sample at or before a time; -1 before the first. */
export function indexAt({ time }: SpeedRun, moment: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! <= moment) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** m/s at a time, on the straight line between its neighbors; the end values beyond the ends. */
export function speedAt(run: SpeedRun, moment: number): number {
  const { time, speed } = run;
  const i = indexAt(run, moment);
  if (i < 0) return speed[0]!;
  if (i >= time.length - 1) return speed[time.length - 1]!;
  return speed[i]! + ((speed[i + 1]! - speed[i]!) * (moment - time[i]!)) / (time[i + 1]! - time[i]!);
}
