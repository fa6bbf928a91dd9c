import type { LogReport } from '../results/log-report.ts';
import type { CompareRunsInput } from './compare-runs.ts';

/** One log that was given twice. */
export interface RepeatedLog {
  readonly names: readonly [string, string];
  /** Whether it stands on both sides, or twice on one. */
  readonly sides: 'both' | 'before' | 'after';
}

/**
 * Finds a log that was given twice, by its stops and whatever its name: stops that are counted twice feign certainty,
 * and a set held against itself shows nothing.
 *
 * @param sets - both sets
 * @returns the first such log; null where every log is one of its own
 */
export function repeatedLog({
  before,
  after,
}: Pick<CompareRunsInput, 'before' | 'after'>): RepeatedLog | null {
  const seen = new Map<string, { readonly name: string; readonly side: 'before' | 'after' }>();
  for (const side of ['before', 'after'] as const) {
    for (const report of { before, after }[side].reports) {
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

/** Two drives never agree in the times and speeds of their stops to the last digit. */
function fingerprint({ stops, duration_s }: LogReport): string {
  return JSON.stringify([
    duration_s,
    ...stops.map(({ start_s, end_s, trace }) => [start_s, end_s, trace.speed_m_s]),
  ]);
}
