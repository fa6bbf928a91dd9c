import { clockGrain } from './clock-grain.ts';
import type { SpeedRun } from './speed-run.ts';

/** The end of a stop. */
export interface RestMoment {
  /** Index of the last sample that still moves. */
  readonly lastMoving: number;
  /** s, when the car came to rest, by extrapolation. */
  readonly time: number;
  /** s, standard error of `time`. */
  readonly standardError: number;
  /** The log shows the car at rest; else it ends just before. */
  readonly isSeen: boolean;
}

/** m/s; slower is at rest for a sensor that wavers. */
const restSpeed = 0.5;
/** m/s; after a rest only this counts as driving on, so that a wavering speed ends a stop once. */
const surelyMoving = 1.5;
/** m/s; a log that ends while the car is slower than this is carried on to rest. */
const nearRest = 2;
/** m/s; no sensor tells this from rest. */
const stillness = 0.1;
/** m/s²; a record that wavers at the end is not carried on for longer than this allows. */
const gentlest = 0.3;

/**
 * Finds where a car comes to rest: each sample at or under 0.5 m/s after a faster one, and the end of a run that is
 * nearly there. Rest itself lies on the line through the last moving and the first resting sample; where that one reads
 * zero already, on the line of the last 0.3 s before (two samples at least), and no later than that sample. Where samples
 * come at 5 Hz or faster and are seen to fall to zero within a second, rest is where they do.
 *
 * @param run - samples of speed
 * @param resolution - m/s, the step that the speed is recorded in; 0 where none shows
 * @returns the ends in order
 */
export function restMoments(run: SpeedRun, resolution: number): readonly RestMoment[] {
  const { speed } = run;
  const found: RestMoment[] = [];
  let hasMoved = false;
  for (let i = 1; i < speed.length; i += 1) {
    hasMoved ||= speed[i - 1]! > surelyMoving;
    if (!hasMoved || speed[i]! > restSpeed) continue;
    found.push(extrapolated(run, i - 1, resolution, true));
    hasMoved = false;
  }
  const last = speed.length - 1;
  if (hasMoved && speed[last]! > restSpeed && speed[last]! < nearRest && speed[last]! < speed[last - 1]!)
    found.push(extrapolated(run, last, resolution, false));
  return found;
}

function extrapolated(run: SpeedRun, last: number, resolution: number, isSeen: boolean): RestMoment {
  const { time, speed } = run;
  const next = last + 1;
  const [from, to] =
    isSeen && speed[next]! > resolution / 2 ? [last, next] : [beforeBy(run, last, 0.3), last];
  const slope = to > from ? (speed[from]! - speed[to]!) / (time[to]! - time[from]!) : 0;
  const onLine = time[to]! + speed[to]! / Math.max(slope, gentlest);
  const zero = isSeen ? firstZero(run, next, Math.max(stillness, resolution / 2)) : -1;
  const watched = zero > next && time[zero]! - time[zero - 1]! <= 0.2;
  const moment = watched ? time[zero]! : Math.min(onLine, zero < 0 ? Infinity : time[zero]!);
  const step = watched ? time[zero]! - time[zero - 1]! : (isSeen ? time[next]! : moment) - time[last]!;
  return { lastMoving: last, time: moment, standardError: step / Math.sqrt(12), isSeen };
}

/** Index of the last sample that lies at least some s before another; one sample before it at least. */
function beforeBy({ time }: SpeedRun, index: number, seconds: number): number {
  let before = Math.max(0, index - 1);
  while (before > 0 && time[index]! - time[before]! < seconds - clockGrain) before -= 1;
  return before;
}

/** Index of the first sample that reads zero, from the first one at rest on, within one second; -1 where none does. */
function firstZero({ time, speed }: SpeedRun, from: number, zero: number): number {
  for (let i = from; i < time.length && time[i]! - time[from]! < 1 - clockGrain; i += 1)
    if (speed[i]! <= zero) return i;
  return -1;
}
