import { linearTable, requireRange } from '@standstill/numerics';

export interface WetPeakFactorInput {
  /** v, m/s. */
  readonly speed: number;
  /** m, depth of standing water. */
  readonly waterDepth: number;
  /** m, tread left. */
  readonly treadDepth: number;
}

const kilometerPerHour = 1 / 3.6;
/** m/s, the speeds of the source's rows. */
export const waterSpeeds = [50 * kilometerPerHour, 90 * kilometerPerHour, 130 * kilometerPerHour] as const;
/** m, the greatest depth of water of the source. */
export const deepestWater = 0.002;
/** m, the tread that the source calls worn, and the one that is taken for its new one. */
export const wornTread = 0.0016;
export const newTread = 0.008;
/** m: more than this is no tread of a car. */
export const deepestTread = 0.03;

const depths = [0, 0.0002, 0.001, deepestWater];
/** Friction at the three speeds, for dry road and 0.2, 1 and 2 mm of water. */
const newRows = [
  [0.85, 0.8, 0.75],
  [0.65, 0.6, 0.55],
  [0.55, 0.3, 0.2],
  [0.5, 0.05, 0],
] as const;
const wornRows = [
  [1, 0.95, 0.9],
  [0.5, 0.2, 0.2],
  [0.4, 0.1, 0.1],
  [0.25, 0.05, 0],
] as const;

const newFactors = newRows.map((row) => row.map((friction, i) => friction / newRows[0][i]!));
const wornFactors = wornRows.map((row) => row.map((friction, i) => friction / wornRows[0][i]!));

/**
 * Answers how much of a tire's dry peak friction is left on standing water at one speed.
 *
 * Equation: λ = μ(v, depth, tread) / μ(v, dry, tread) at the rows of the source, straight lines in speed, depth and tread
 * between them.
 * Assumes: the source's friction figures stand for peak friction; its new tread is 8 mm, and more than that is as good.
 * Below 50 km/h the row of 50 km/h is held, which is on the low side. Under 0.2 mm the straight line to the dry road is
 * a guess: a film that only shines may already cost most of what 0.2 mm costs (take a damp surface factor for it).
 * Valid: speed up to 130 km/h, depth up to 2 mm, tread from 1.6 mm; on a dry road any speed and tread.
 *
 * @param input - v, speed, m/s; depth of water, m; tread left, m
 * @returns 1, factor on the dry peak friction
 * @throws OutOfRangeError beyond the rows of the source
 * Source: [bosch-handbook]
 * @example
 * wetPeakFactor({ speed: 25, waterDepth: 0.001, treadDepth: 0.008 }) // => 0.375
 */
export function wetPeakFactor({ speed, waterDepth, treadDepth }: WetPeakFactorInput): number {
  requireRange('depth of water', waterDepth, 'm', 0, deepestWater);
  if (waterDepth === 0) return 1;
  requireRange('speed on water', speed, 'm/s', 0, waterSpeeds[2]);
  requireRange('tread left, on water', treadDepth, 'm', wornTread, deepestTread);
  const asNew = Math.min(1, (treadDepth - wornTread) / (newTread - wornTread));
  const worn = between(wornFactors, waterDepth, speed);
  return worn + asNew * (between(newFactors, waterDepth, speed) - worn);
}

function between(factors: readonly (readonly number[])[], waterDepth: number, speed: number): number {
  let deeper = 1;
  while (deeper < depths.length - 1 && waterDepth > depths[deeper]!) deeper += 1;
  const share = (waterDepth - depths[deeper - 1]!) / (depths[deeper]! - depths[deeper - 1]!);
  const above = linearTable(waterSpeeds, factors[deeper - 1]!, speed);
  return above + share * (linearTable(waterSpeeds, factors[deeper]!, speed) - above);
}
