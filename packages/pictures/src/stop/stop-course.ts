import type { StopResult } from '@standstill/workshop';

/** A moment of a stop as drawn: s and m from its start, m/s, m/s (one standard error), m/s² (positive when slowing). */
export interface CoursePoint {
  readonly time: number;
  readonly distance: number;
  readonly speed: number;
  readonly speedError: number;
  readonly deceleration: number;
}

/** Most points that a line of this size can show. */
const mostPoints = 600;

/**
 * The trace of a stop from its start on, with the distance along the road; thinned out where the log is denser than the
 * picture.
 *
 * Equation: distance = sum of mean speed × time over the samples, 0 at the start
 *
 * @param stop - with its trace, s and m/s
 * @returns the points, s, m and m/s; those before the start have negative distances
 */
export function stopCourse({ trace, start_s: start }: StopResult): readonly CoursePoint[] {
  const points: CoursePoint[] = [];
  let distance = 0;
  trace.time_s.forEach((time, row) => {
    const speed = trace.speed_m_s[row] ?? 0;
    const last = points.at(-1);
    if (last !== undefined) distance += ((last.speed + speed) / 2) * (time - start - last.time);
    const speedError = trace.speedStandardError_m_s[row] ?? 0;
    points.push({
      time: time - start,
      distance,
      speed,
      speedError,
      deceleration: trace.deceleration_m_s2[row] ?? NaN,
    });
  });
  const offset = courseAt(points, 'time', 0)?.distance ?? 0;
  const step = Math.max(1, Math.ceil(points.length / mostPoints));
  return points
    .filter((_, row) => row % step === 0 || row === points.length - 1)
    .map((point) => ({ ...point, distance: point.distance - offset }));
}

/** The course between two times, s, its ends laid onto them where it goes on. */
export function courseBetween(
  points: readonly CoursePoint[],
  [from, to]: readonly [number, number],
): readonly CoursePoint[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const inside = points.filter(({ time }) => time > from && time < to);
  const ends = [from, to].map((time) =>
    time < first.time || time > last.time ? null : courseAt(points, 'time', time),
  );
  return [ends[0] ?? null, ...inside, ends[1] ?? null].filter((point) => point !== null);
}

/** The first moment at which time comes up to, or speed comes down to a value; null where it never does. */
export function courseAt(
  points: readonly CoursePoint[],
  what: 'time' | 'speed',
  value: number,
): CoursePoint | null {
  const passed = (point: CoursePoint): boolean =>
    what === 'time' ? point.time >= value : point.time >= 0 && point.speed <= value;
  const after = points.findIndex(passed);
  const [before, found] = [points[after - 1], points[after]];
  if (found === undefined) return null;
  if (before === undefined || before[what] === found[what]) return found;
  const share = (value - before[what]) / (found[what] - before[what]);
  const mix = (key: keyof CoursePoint): number => before[key] + share * (found[key] - before[key]);
  return {
    time: mix('time'),
    distance: mix('distance'),
    speed: mix('speed'),
    speedError: mix('speedError'),
    deceleration: mix('deceleration'),
  };
}
