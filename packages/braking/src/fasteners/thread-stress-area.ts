import { requireRange } from '@standstill/numerics';

/** A metric thread: nominal diameter and pitch. */
export interface MetricThread {
  /** d, m. */
  readonly diameter: number;
  /** P, m. */
  readonly pitch: number;
}

/**
 * Answers the area that carries the load in a metric thread.
 *
 * Equation: A_s = π/4 (d − 0.9382 P)².
 * Assumes: threads of usual tolerance; hot-dip galvanized threads are cut smaller and carry less.
 * Valid: diameter 3 to 40 mm, pitch 0.35 mm up to a quarter of the diameter.
 *
 * @param thread - d, nominal diameter, m; P, pitch, m
 * @returns m², stress area
 * @throws OutOfRangeError where an input cannot be
 * Source: [iso-898-1]
 * @example
 * threadStressArea({ diameter: 0.012, pitch: 0.00175 }) // => 8.42664e-05
 */
export function threadStressArea({ diameter, pitch }: MetricThread): number {
  requireRange('thread diameter', diameter, 'm', 0.003, 0.04);
  requireRange('thread pitch', pitch, 'm', 0.00035, diameter / 4);
  return (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2;
}
