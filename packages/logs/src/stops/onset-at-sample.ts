import { trapezoid } from '@standstill/numerics';
import type { OnsetStart } from './onset-start.ts';
import type { RoughOnset } from './rough-onset.ts';
import { indexAt, speedAt } from './speed-at.ts';
import type { SpeedRun } from './speed-run.ts';

/**
 * Takes a stop to begin at the last sample that was surely not braked. For traffic stops, whose deceleration grows for
 * seconds and shows no step to extrapolate from.
 *
 * Assumes: the true application lies within the sample after; the standard error of the distance says so.
 *
 * @param run - samples of speed
 * @param rough - where the walk back from rest ended
 * @param interval - s, usual time between samples
 * @param errors - m/s and 1, noise of a sample and how neighboring errors hang together
 * @returns the start
 */
export function onsetAtSample(
  run: SpeedRun,
  rough: RoughOnset,
  interval: number,
  errors: { readonly noise: number; readonly correlation: number },
): OnsetStart {
  const joins = rough.fastest;
  const sampleTime = run.time[joins]!;
  const unsure = Math.max(interval, 0.1) / Math.sqrt(3);
  return {
    time: sampleTime,
    joins,
    noise: errors.noise,
    correlation: errors.correlation,
    from: (start) => {
      const begin = start ?? sampleTime;
      const entrySpeed = speedAt(run, begin);
      const standardError = start === null ? entrySpeed * unsure : 0;
      return { entrySpeed, distance: between(run, begin, sampleTime), standardError };
    },
  };
}

/** m between two times in s, negative where the second comes first. */
function between(run: SpeedRun, from: number, to: number): number {
  if (from > to) return -between(run, to, from);
  const [first, last] = [indexAt(run, from) + 1, indexAt(run, to)];
  const inner = Array.from(run.time.subarray(first, last + 1));
  const times = [from, ...inner, to];
  return trapezoid(
    times,
    times.map((time) => speedAt(run, time)),
  );
}
