import type { SpeedRun } from './speed-run.ts';

/**
 * One stop as a chain of points: its start, the samples after it, rest. All figures of the stop are taken from it.
 *
 * @param run - samples of speed
 * @param start - s and m/s of the start
 * @param rest - s of rest
 * @param from - index of the first sample to use after the start
 * @param lastMoving - index of the last sample to use
 * @returns s and m/s, the speed zero at the end
 */
export function stopTrace(
  run: SpeedRun,
  start: { readonly time: number; readonly speed: number },
  rest: number,
  from: number,
  lastMoving: number,
): SpeedRun {
  const count = Math.max(0, lastMoving - from + 1);
  const time = new Float64Array(count + 2);
  const speed = new Float64Array(count + 2);
  time[0] = start.time;
  speed[0] = start.speed;
  for (let i = 0; i < count; i += 1) {
    time[i + 1] = run.time[from + i]!;
    speed[i + 1] = run.speed[from + i]!;
  }
  time[count + 1] = Math.max(rest, time[count]!);
  return { time, speed };
}
