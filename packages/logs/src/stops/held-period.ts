import { quantile } from '@standstill/numerics';

/**
 * Finds out whether the rows of a log repeat the last known speed between its real updates (sample and hold, as a log
 * of polled values does), and how long an update takes.
 *
 * A value that is merely recorded in coarse steps changes by one step at a time. One that is held jumps over steps. So
 * of the changes by two steps and more the rows since the last change are counted: usually two or more is a hold.
 *
 * @param time - s, ascending
 * @param speed - m/s, finite
 * @param resolution - m/s, the step that the speed is recorded in; 0 where none shows
 * @returns s from update to update; null where every row is news
 */
export function heldPeriod(
  time: ArrayLike<number>,
  speed: ArrayLike<number>,
  resolution: number,
): number | null {
  const rows: number[] = [];
  const times: number[] = [];
  const leap = Math.max(1.5 * resolution, 0.05);
  let since = 0;
  for (let i = 1; i < speed.length; i += 1) {
    if (speed[i] === speed[i - 1]) continue;
    if (since > 0 && Math.abs(speed[i]! - speed[i - 1]!) > leap) {
      rows.push(i - since);
      times.push(time[i]! - time[since]!);
    }
    since = i;
  }
  if (rows.length < 3 || quantile(rows, 0.5) < 2) return null;
  return quantile(times, 0.5);
}
