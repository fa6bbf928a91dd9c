import type { SetStop } from './stop-set-of.ts';

/** Cosine from which on a heading counts as along a way, or against it: within 60°. */
const along = 0.5;

/**
 * Which way a stop was driven: as its run says, else by the heading that the log recorded.
 *
 * @param stop - with its run and heading, rad
 * @param axis - rad from north, heading that counts as out; null where none is known
 * @returns 1 out, -1 back; undefined where neither run nor heading tells
 */
export function directionOf({ run, stop }: SetStop, axis: number | null): 1 | -1 | undefined {
  if (run?.direction !== undefined) return run.direction === 'out' ? 1 : -1;
  if (axis === null || stop.heading_rad === null) return undefined;
  const cosine = Math.cos(stop.heading_rad - axis);
  if (cosine > along) return 1;
  return cosine < -along ? -1 : undefined;
}
