import { isoSeconds } from '@standstill/logs';
import { mean } from '@standstill/numerics';
import { saidOf } from '../differences/worded-differences.ts';
import { runsOf } from '../sets/run-set.ts';
import type { RunSet } from '../sets/run-set.ts';

interface ThreeSets {
  readonly before: RunSet;
  readonly after: RunSet;
  readonly repeat: RunSet;
}

/**
 * Where the new set-up was driven between the old one and its repeat: by the clocks of the logs where all tell the date,
 * else by the dates of the runs, else halfway.
 *
 * @param sets - old, new, old again
 * @returns share of the way from before to repeat, 0 to 1; 1 where the new set-up and the repeat share a day that the old
 *   one was not driven on
 */
export function placeBetween({ before, after, repeat }: ThreeSets): number {
  const [first, middle, last] = [before, after, repeat].map(momentOf);
  if (first != null && middle != null && last != null && last > first)
    return Math.min(1, Math.max(0, (middle - first) / (last - first)));
  const [a, b, c] = [before, after, repeat].map((set) => saidOf(runsOf(set), 'date'));
  if (a === '' || b === '' || c === '' || a === c) return 0.5;
  if (b === c) return 1;
  return a === b ? 0 : 0.5;
}

/** s since 1970, mean moment of the stops of a set; null where a log does not tell its date. */
function momentOf({ reports }: RunSet): number | null {
  const moments = reports.flatMap(({ epoch, stops }) => {
    const start = isoSeconds(epoch ?? '') ?? NaN;
    return stops.map(({ start_s }) => start + start_s);
  });
  return moments.length === 0 || moments.some(Number.isNaN) ? null : mean(moments);
}
