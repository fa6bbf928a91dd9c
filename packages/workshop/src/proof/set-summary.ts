import type { SetFigures } from '@standstill/logs';
import type { Comparison } from '../results/log-report.ts';
import type { RunSet } from './sets/run-set.ts';
import { setStops } from './stop-set-of.ts';

/** The figures of a set as published, what does not count and what was judged under the name of its log. */
export function setSummary(figures: SetFigures, set: RunSet): Comparison['before'] {
  const stops = setStops(set);
  const logOf = (index: number): string => stops[index]?.log ?? set.name;
  return {
    name: figures.name,
    count: figures.distances.length,
    mean_m: { ...figures.mean },
    sharedError_m: figures.sharedError,
    standardDeviation_m: figures.standardDeviation,
    best_m: figures.best,
    worst_m: figures.worst,
    distances_m: [...figures.distances],
    trend_m_per_run: figures.trend === null ? null : { ...figures.trend },
    warmUp_m: figures.warmUp === null ? null : { ...figures.warmUp },
    leftOut: figures.leftOut.map(({ index, number, reason }) => ({ log: logOf(index), number, reason })),
    judged: figures.judged.map(({ index, number, verdict, reason }) => ({
      log: logOf(index),
      number,
      verdict,
      reason,
    })),
  };
}
