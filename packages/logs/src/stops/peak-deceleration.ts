import { clockGrain } from './clock-grain.ts';
import type { SpeedRun } from './speed-run.ts';

/**
 * The greatest mean deceleration over any 0.2 s of a stop, or from one sample to the next where that takes longer.
 *
 * @param stop - s and m/s from the start to rest
 * @param window - s
 * @returns m/s²
 */
export function peakDeceleration({ time, speed }: SpeedRun, window = 0.2): number {
  let peak = 0;
  let end = 1;
  for (let i = 0; i < time.length - 1; i += 1) {
    end = Math.max(end, i + 1);
    while (end < time.length - 1 && time[end]! - time[i]! < window - clockGrain) end += 1;
    const step = time[end]! - time[i]!;
    if (step < window - clockGrain && end === time.length - 1 && i > 0) break;
    if (step > 0) peak = Math.max(peak, (speed[i]! - speed[end]!) / step);
  }
  return peak;
}
