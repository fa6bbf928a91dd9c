import type { RestMoment } from './rest-moment.ts';
import type { SpeedRun } from './speed-run.ts';
import { speedAt } from './speed-at.ts';

/** Where the walk back from rest ended. */
export interface RoughOnset {
  /** Index of the earliest sample from which the car slows. */
  readonly index: number;
  /** Index of the fastest sample within that time, the earliest of equals: the last one that was surely not braked. */
  readonly fastest: number;
}

/** m/s²; more than a car loses by drag and engine in gear on the level. Common practice. */
const brakingAbove = 0.5;
/** m/s; slower than this a driver may ease off before rest, and it is still the same stop. */
const easingOff = 1.5;

/**
 * Walks back from rest to about where the braking began: as long as the mean deceleration over the following second
 * (one sample where that is longer) is at least 0.5 m/s², or may be by one standard error of the record's rounding.
 *
 * @param run - samples of speed
 * @param rest - the end of the stop
 * @param interval - s, usual time between samples
 * @param resolution - m/s, the step that the speed is recorded in
 * @returns where the walk ended
 */
export function roughOnset(
  run: SpeedRun,
  rest: RestMoment,
  interval: number,
  resolution: number,
): RoughOnset {
  const { time, speed } = run;
  const ahead = Math.max(1, interval);
  const rounding = resolution / Math.sqrt(6);
  let index = rest.lastMoving;
  while (index > 0) {
    const before = index - 1;
    const end = Math.min(time[before]! + ahead, rest.time);
    const endSpeed = end === rest.time ? 0 : speedAt(run, end);
    const deceleration = (speed[before]! - endSpeed + rounding) / (end - time[before]!);
    const isEasing = speed[before]! < easingOff && speed[before]! >= speed[index]!;
    if (deceleration < brakingAbove && !isEasing) break;
    index = before;
  }
  let fastest = index;
  for (let i = index; i <= rest.lastMoving && time[i]! <= time[index]! + ahead; i += 1)
    if (speed[i]! > speed[fastest]!) fastest = i;
  return { index, fastest };
}
