import type { SpeedRun } from './speed-run.ts';

/**
 * Keeps of held speeds what was new: the first row of every value, and, where a value stayed longer than an update
 * takes, one row an update before it changed, because the car was then still at that speed. What stands before the
 * first change of a run may be old news from before a gap; it counts only where it stayed for two updates.
 *
 * @param run - rows with held speeds
 * @param period - s from update to update
 * @returns the samples that were measured
 */
export function freshSamples({ time, speed }: SpeedRun, period: number): SpeedRun {
  const times: number[] = [];
  const speeds: number[] = [];
  const keep = (moment: number, value: number): void => {
    times.push(moment);
    speeds.push(value);
  };
  let since = -1;
  for (let i = 1; i < speed.length; i += 1) {
    if (speed[i] === speed[i - 1]) continue;
    const still = time[i]! - period;
    const fresh = since >= 0 ? time[since]! : time[0]! + period;
    if (since < 0 && still > fresh) keep(fresh, speed[i - 1]!);
    if (still > fresh + period / 2) keep(still, speed[i - 1]!);
    keep(time[i]!, speed[i]!);
    since = i;
  }
  const last = speed.length - 1;
  if (since >= 0 && time[last]! - time[since]! > period) {
    keep(time[last]!, speed[last]!);
  }
  return { time: Float64Array.from(times), speed: Float64Array.from(speeds) };
}
