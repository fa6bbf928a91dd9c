import { rearPressureAfterValve } from '../foot-to-pressure/rear-pressure-after-valve.ts';
import type { InstalledLine } from './installed-line.ts';

export interface PointOnLine {
  /** p_f, Pa. */
  readonly frontPressure: number;
  /** p_r, Pa. */
  readonly rearPressure: number;
  /** T_1, N, both front wheels. */
  readonly frontForce: number;
  /** T_2, N, both rear wheels. */
  readonly rearForce: number;
}

/**
 * Answers pressures and brake forces of both axles at a force on the master cylinder, as if nothing locked.
 *
 * Equation: F = (2 T / r) with T linear in (p − p_0), zero below p_0.
 * Assumes: as `installedLine`.
 * Valid: master force from 0 N.
 *
 * @param line - the installed line
 * @param masterForce - F_m, force on the master cylinder or balance bar, N
 * @returns pressures, Pa, and brake forces of both axles, N
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * pointOnLine(installedLine(exampleSetUp, usualPadTemperatures), 2000).frontForce // => 6368.64
 */
export function pointOnLine(line: InstalledLine, masterForce: number): PointOnLine {
  const frontPressure = line.frontGain * masterForce;
  const rearPressure = rearPressureAfterValve({
    rearValve: line.rearValve,
    inletPressure: line.rearGain * masterForce,
  });
  return {
    frontPressure,
    rearPressure,
    frontForce: Math.max(0, frontPressure - line.frontPushOut) * line.frontForcePerPressure,
    rearForce: Math.max(0, rearPressure - line.rearPushOut) * line.rearForcePerPressure,
  };
}
