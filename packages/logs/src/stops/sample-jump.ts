import type { RestMoment } from './rest-moment.ts';
import type { SpeedRun } from './speed-run.ts';

/** m/s², 1.6 g: more than tires on a road hold. Common practice. */
export const greatestDeceleration = 1.6 * 9.80665;

/**
 * Whether a stop is made up by a jump of the record: one step that takes more than a third of the entry speed faster
 * than any tire could, down into rest or up out of it within the second after.
 *
 * @param run - samples of speed
 * @param first - index of the first sample of the stop
 * @param rest - its end
 * @param entrySpeed - m/s
 * @returns m/s² of the worst such step; null where there is none
 */
export function sampleJump(
  run: SpeedRun,
  first: number,
  rest: RestMoment,
  entrySpeed: number,
): number | null {
  const { time, speed } = run;
  let worst: number | null = null;
  for (let i = Math.max(1, first); i < time.length && time[i]! <= rest.time + 1; i += 1) {
    const change = Math.abs(speed[i]! - speed[i - 1]!);
    const rate = change / (time[i]! - time[i - 1]!);
    if (change > entrySpeed / 3 && rate > greatestDeceleration) worst = Math.max(worst ?? 0, rate);
  }
  return worst;
}
