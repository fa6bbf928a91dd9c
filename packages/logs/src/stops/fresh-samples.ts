import type { SpeedRun } from './speed-run.ts';

/**
 * Keeps of held speeds what was new: the first row of every value, and, where a value stayed longer than an update
 * takes, one row an update before it changed, because the car was then still at that speed. What stands before the
 * first change of a run may be old news from before a gap and is left out.
 *
 * @param run - rows with held speeds
 * @param period - s from update to update
 * @returns the samples that were measured
 */
export function freshSamples({ time, speed }: SpeedRun, period: number): SpeedRun {
  const times: number[] = [];
  const speeds: number[] = [];
  let since = -1;
  for (let i = 1; i < speed.length; i += 1) {
    if (speed[i] === speed[i - 1]) continue;
    const still = time[i]! - period;
    if (since >= 0 && still > time[since]! + period / 2) {
      times.push(still);
      speeds.push(speed[i - 1]!);
    }
    times.push(time[i]!);
    speeds.push(speed[i]!);
    since = i;
  }
  const last = speed.length - 1;
  if (since >= 0 && time[last]! - time[since]! > period) {
    times.push(time[last]!);
    speeds.push(speed[last]!);
  }
  return { time: Float64Array.from(times), speed: Float64Array.from(speeds) };
}
