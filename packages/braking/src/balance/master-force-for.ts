import type { InstalledLine } from './installed-line.ts';
import { lineCorners } from './line-corners.ts';
import { pointOnLine } from './point-on-line.ts';

/**
 * Answers the master force at which both axles' brake forces sum to a wanted force.
 *
 * Equation: exact between the corners of the line, where the sum is straight.
 * Assumes: as `installedLine`.
 * Valid: up to the sum at the strongest foot.
 *
 * @param line - the installed line
 * @param brakeForce - T_1 + T_2, wanted sum, N
 * @returns N, master force; undefined where the strongest foot does not reach the sum
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * masterForceFor(installedLine(exampleSetUp, usualPadTemperatures), 8000) // => 1963.44
 */
export function masterForceFor(line: InstalledLine, brakeForce: number): number | undefined {
  let before = 0;
  let sumBefore = 0;
  for (const corner of lineCorners(line)) {
    const point = pointOnLine(line, corner);
    const sum = point.frontForce + point.rearForce;
    if (sum >= brakeForce && sum > sumBefore) {
      return before + ((corner - before) * (brakeForce - sumBefore)) / (sum - sumBefore);
    }
    before = corner;
    sumBefore = sum;
  }
  return undefined;
}
