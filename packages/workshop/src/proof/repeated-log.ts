import type { LogReport } from '../results/log-report.ts';
import type { CompareRunsInput } from './compare-runs.ts';
import type { RunSet } from './sets/run-set.ts';

type GivenSets = Pick<CompareRunsInput, 'before' | 'after' | 'repeat' | 'reference'>;
type Side = 'before' | 'after' | 'repeat' | 'reference-before' | 'reference-after';

/** One log that was given twice. */
export interface RepeatedLog {
  readonly names: readonly [string, string];
  /** Whether it stands in two sets, or twice in one. */
  readonly sides: 'both' | Side;
}

/**
 * Finds a log that was given twice, by its stops and whatever its name: stops that are counted twice feign certainty,
 * and a set held against itself shows nothing.
 *
 * @param sets - all sets
 * @returns the first such log; null where every log is one of its own
 */
export function repeatedLog(sets: GivenSets): RepeatedLog | null {
  const seen = new Map<string, { readonly name: string; readonly side: Side }>();
  for (const [side, set] of sidesOf(sets)) {
    for (const report of set.reports) {
      if (report.stops.length === 0) continue;
      const print = fingerprint(report);
      const earlier = seen.get(print);
      if (earlier !== undefined)
        return { names: [earlier.name, report.source.name], sides: earlier.side === side ? side : 'both' };
      seen.set(print, { name: report.source.name, side });
    }
  }
  return null;
}

function sidesOf({ before, after, repeat, reference }: GivenSets): readonly (readonly [Side, RunSet])[] {
  return [
    ['before', before],
    ['after', after],
    ...(repeat === undefined ? [] : [['repeat', repeat] as const]),
    ...(reference === undefined
      ? []
      : ([
          ['reference-before', reference.before],
          ['reference-after', reference.after],
        ] as const)),
  ];
}

/** Two drives never agree in the times and speeds of their stops to the last digit. */
function fingerprint({ stops, duration_s }: LogReport): string {
  return JSON.stringify([
    duration_s,
    ...stops.map(({ start_s, end_s, trace }) => [start_s, end_s, trace.speed_m_s]),
  ]);
}
