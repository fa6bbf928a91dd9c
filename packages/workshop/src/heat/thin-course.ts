import type { AxleCourse, HeatCourse } from '@standstill/braking';
import type { HeatCourseResult } from '../results/heat-report.ts';

/** Most nodes that leave the program. */
const mostNodes = 400;

/**
 * A course with fewer nodes: of each stretch the hottest node of the front rubbing face and the first one stay.
 *
 * @param course - s, m/s, °C
 * @returns the same, at most about 400 nodes
 */
export function thinCourse(course: HeatCourse): HeatCourseResult {
  const kept = keptNodes(course.front.interface);
  const pick = (values: Float64Array): number[] => kept.map((at) => rounded(values[at] ?? NaN));
  const axle = (of: AxleCourse): HeatCourseResult['front'] => ({
    interface_C: pick(of.interface),
    bulk_C: pick(of.bulk),
    pad_C: pick(of.pad),
    fluid_C: pick(of.fluid),
  });
  return {
    time_s: pick(course.time),
    speed_m_s: pick(course.speed),
    front: axle(course.front),
    rear: axle(course.rear),
  };
}

function keptNodes(values: Float64Array): readonly number[] {
  const stretch = Math.max(1, Math.ceil((2 * values.length) / mostNodes));
  const kept = new Set<number>();
  for (let from = 0; from < values.length; from += stretch) {
    let hottest = from;
    for (let at = from; at < Math.min(values.length, from + stretch); at += 1)
      if ((values[at] ?? 0) > (values[hottest] ?? 0)) hottest = at;
    kept.add(from).add(hottest);
  }
  kept.add(values.length - 1);
  return [...kept].sort((one, other) => one - other);
}

/** To a hundredth: no figure here is better known. */
function rounded(value: number): number {
  return Math.round(100 * value) / 100;
}
