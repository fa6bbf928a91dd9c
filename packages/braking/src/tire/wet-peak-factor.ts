import { linearTable, requireRange } from '@standstill/numerics';

export interface WetPeakFactorInput {
  /** v, m/s. */
  readonly speed: number;
  /** m, depth of standing water. */
  readonly waterDepth: number;
  /** True for a tread worn to 1.6 mm. */
  readonly treadWorn: boolean;
}

const kilometerPerHour = 1 / 3.6;
const speeds = [50 * kilometerPerHour, 90 * kilometerPerHour, 130 * kilometerPerHour];
const depths = [0, 0.001, 0.002];
/** Friction at the three speeds, for dry road, 1 mm and 2 mm of water. */
const newTread = [
  [0.85, 0.8, 0.75],
  [0.55, 0.3, 0.2],
  [0.5, 0.05, 0],
] as const;
const wornTread = [
  [1, 0.95, 0.9],
  [0.4, 0.1, 0.1],
  [0.25, 0.05, 0],
] as const;

/**
 * Answers how much of a tire's dry peak friction is left on standing water: a `surfaceFactor` for one speed.
 *
 * Equation: μ(v, depth) / μ(v, dry), both by straight lines in speed and in depth between the rows of the source.
 * Assumes: the source's friction figures stand for peak friction. Below 50 km/h the row of 50 km/h is held, which is
 * on the low side. Between dry and 1 mm the true fall is steeper at first than the straight line.
 * Valid: speed up to 130 km/h, depth up to 2 mm.
 *
 * @param input - v, speed, m/s; depth of water, m; tread new or worn to 1.6 mm
 * @returns 1, factor on the dry peak friction
 * @throws OutOfRangeError beyond the rows of the source
 * Source: [bosch-handbook]
 * @example
 * wetPeakFactor({ speed: 25, waterDepth: 0.001, treadWorn: false }) // => 0.375
 */
export function wetPeakFactor({ speed, waterDepth, treadWorn }: WetPeakFactorInput): number {
  requireRange('speed on water', speed, 'm/s', 0, 130 * kilometerPerHour);
  requireRange('depth of water', waterDepth, 'm', 0, 0.002);
  const rows = treadWorn ? wornTread : newTread;
  const atSpeed = rows.map((row) => linearTable(speeds, row, speed));
  return linearTable(depths, atSpeed, waterDepth) / linearTable(speeds, rows[0], speed);
}
