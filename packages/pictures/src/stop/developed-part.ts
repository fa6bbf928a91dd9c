import { courseAt, type CoursePoint } from './stop-course.ts';

/** Between 0.8 and 0.1 of the speed at the start a deceleration counts as fully developed. */
export interface DevelopedPart {
  readonly from: CoursePoint | null;
  readonly to: CoursePoint | null;
}

/**
 * Where a stop passes 0.8 and 0.1 of the speed that it began with.
 *
 * @param course - of the stop, s, m and m/s
 * @param entrySpeed - at its start, m/s
 * @returns the two moments, s, m and m/s; null where the stop does not pass them
 */
export function developedPart(course: readonly CoursePoint[], entrySpeed: number): DevelopedPart {
  return {
    from: courseAt(course, 'speed', 0.8 * entrySpeed),
    to: courseAt(course, 'speed', 0.1 * entrySpeed),
  };
}
