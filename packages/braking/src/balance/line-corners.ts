import type { InstalledLine } from './installed-line.ts';

/**
 * Answers at which master forces the installed line bends: between two neighbors everything on it is straight.
 *
 * Equation: F = p_0f / g_f; F = p_k / g_r; F at which the rear pressure behind the valve is p_0r.
 * Valid: any installed line.
 *
 * @param line - the installed line
 * @returns N, ascending master forces from 0 to that of the strongest foot
 * Source: [gillespie]
 * @example
 * lineCorners(installedLine(exampleSetUp, usualPadTemperatures)).length // => 4
 */
export function lineCorners(line: InstalledLine): readonly number[] {
  const corners = [0, line.frontPushOut / line.frontGain, line.greatestMasterForce];
  const rearInlet = inletForRearPressure(line, line.rearPushOut);
  if (rearInlet !== undefined) corners.push(rearInlet / line.rearGain);
  if (line.rearValve.kind === 'proportioning') corners.push(line.rearValve.kneePressure / line.rearGain);
  const inside = corners.filter((force) => force <= line.greatestMasterForce);
  return [...new Set(inside)].sort((a, b) => a - b);
}

/** Pressure before the valve that gives a pressure behind it; undefined where a flat valve never lets it through. */
function inletForRearPressure(line: InstalledLine, pressure: number): number | undefined {
  const valve = line.rearValve;
  if (valve.kind === 'none' || pressure <= valve.kneePressure) return pressure;
  return valve.slope === 0 ? undefined : valve.kneePressure + (pressure - valve.kneePressure) / valve.slope;
}
