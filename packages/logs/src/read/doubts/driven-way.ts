import type { ChannelTable } from '../../channels/channel-table.ts';

/** s; over longer silence of the speed nothing is integrated. */
const longestSilence = 2;

/** The way that a log drove by one of its speeds. */
export interface DrivenWay {
  /**
   * The way up to a moment; moments have to be asked for in order.
   * @returns m from the start of the stretch, and the stretch's number; null in silence of the speed
   */
  readonly at: (row: number) => { readonly way: number; readonly stretch: number } | null;
}

/**
 * Integrates a speed over time, by trapezoids, in stretches between gaps and seams.
 *
 * @param table - the log
 * @param speed - m/s, one a row, gaps as NaN
 * @returns the way at each row
 */
export function drivenWay({ time, segmentStarts }: ChannelTable, speed: Float64Array): DrivenWay {
  const rows = Uint32Array.from(speed.keys()).filter((row) => !Number.isNaN(speed[row]!));
  const ways = new Float64Array(rows.length);
  const stretches = new Uint32Array(rows.length);
  let segment = 0;
  for (let i = 0; i < rows.length; i += 1) {
    const before = segment;
    while ((segmentStarts[segment + 1] ?? Infinity) <= rows[i]!) segment += 1;
    if (i === 0) continue;
    const duration = time[rows[i]!]! - time[rows[i - 1]!]!;
    const isCut = segment !== before || duration > longestSilence;
    stretches[i] = stretches[i - 1]! + (isCut ? 1 : 0);
    ways[i] = isCut ? 0 : ways[i - 1]! + ((speed[rows[i]!]! + speed[rows[i - 1]!]!) / 2) * duration;
  }
  let next = 0;
  return {
    at: (row) => {
      while (next < rows.length && rows[next]! < row) next += 1;
      if (rows[next] === row) return { way: ways[next]!, stretch: stretches[next]! };
      if (next === 0 || next === rows.length || stretches[next] !== stretches[next - 1]) return null;
      const since = time[row]! - time[rows[next - 1]!]!;
      const share = since / (time[rows[next]!]! - time[rows[next - 1]!]!);
      const first = speed[rows[next - 1]!]!;
      const here = first + (speed[rows[next]!]! - first) * share;
      return { way: ways[next - 1]! + ((first + here) / 2) * since, stretch: stretches[next]! };
    },
  };
}
