import type { Comparison, LogReport } from '@standstill/workshop';
import type { MarkShape } from '../road/mark-shape.ts';

/** A run of a set as drawn: m, and the mark that says whether it counts and who decided. */
export interface DrawnRun {
  readonly distance: number;
  readonly shape: MarkShape;
}

type SetResult = Comparison['before'];

/**
 * Every run of a set that has a distance: those that count, and, from the reports, those that don't.
 *
 * @param set - of the comparison, distances in m
 * @param comparison - its definition and nominal speed, m/s
 * @param reports - the logs of the set, which know the distances of what was left out, m
 * @returns the runs, m; what was left out only where it has a distance from the same speed
 */
export function setRuns(
  set: SetResult,
  { definition, nominalSpeed_m_s: nominal }: Pick<Comparison, 'definition' | 'nominalSpeed_m_s'>,
  reports: readonly LogReport[],
): readonly DrawnRun[] {
  const distanceOf = (log: string, number: number): number | null => {
    const report = reports.find(({ source }) => source.name === log);
    const stop = report?.stops.find((each) => each.number === number);
    const own = report?.nominalSpeed_m_s ?? null;
    if (stop === undefined || own === null || Math.abs(own - nominal) > 1e-6) return null;
    return definition === 'gate' ? stop.gateDistance_m : stop.correctedDistance_m;
  };
  const restored = set.judged
    .filter(({ verdict }) => verdict === 'restored')
    .map(({ log, number }) => distanceOf(log, number));
  const counted = set.distances_m.map((distance): DrawnRun => {
    const found = restored.findIndex((each) => each !== null && Math.abs(each - distance) < 1e-9 * distance);
    if (found >= 0) restored.splice(found, 1);
    return { distance, shape: found >= 0 ? 'square' : 'dot' };
  });
  const left = set.leftOut.flatMap(({ log, number }): DrawnRun[] => {
    const distance = distanceOf(log, number);
    const byHand = set.judged.some((each) => each.log === log && each.number === number);
    return distance === null ? [] : [{ distance, shape: byHand ? 'crossed-square' : 'cross' }];
  });
  return [...counted, ...left];
}
