import { requireRange } from '@standstill/numerics';
import type { Fluid } from '../../set-up/fluid.ts';
import { mostWater, waterShare } from './water-share.ts';

export interface BoilingPointInput {
  /** °C, without water. */
  readonly dryBoilingPoint: number;
  /** °C, with 3.7 % of water. */
  readonly wetBoilingPoint: number;
  /** w, share of water by volume, 1. */
  readonly water: number;
}

/** Share of water, 1, at which FMVSS 116 states the wet boiling point. */
export const wetWater = 0.037;
/** Share of water, 1, over which the fall of the boiling point slows down (from memory: half is gone near 1.3 %). */
const bend = 0.025;

/**
 * Answers when a brake fluid with some water in it boils.
 *
 * Equation: T = T_dry − (T_dry − T_wet) (1 − e^(−w / 0.025)) / (1 − e^(−0.037 / 0.025)).
 * Assumes: the first water costs most; the bend is from memory, the two ends are the fluid's own. At the pressure of the
 * air: what a released brake has.
 * Valid: 0 to 8 % of water; above 3.7 % beyond what standards state.
 *
 * @param input - T_dry and T_wet, °C; w, share of water by volume, 1
 * @returns °C, boiling point
 * @throws OutOfRangeError where an input cannot be
 * Source: [fmvss-116], [common-practice]
 * @example
 * boilingPoint({ dryBoilingPoint: 230, wetBoilingPoint: 155, water: 0.02 }) // => 176.527
 */
export function boilingPoint({ dryBoilingPoint, wetBoilingPoint, water }: BoilingPointInput): number {
  const dry = requireRange('dry boiling point', dryBoilingPoint, '°C', 80, 450);
  const wet = requireRange('wet boiling point', wetBoilingPoint, '°C', 60, dry);
  const share = requireRange('share of water', water, '', 0, mostWater);
  return dry - ((dry - wet) * Math.expm1(-share / bend)) / Math.expm1(-wetWater / bend);
}

/**
 * Answers when the fluid of a set-up boils today, at its age.
 *
 * Equation: `boilingPoint` at the water of `waterShare`.
 * Assumes: as both.
 * Valid: as both.
 *
 * @param fluid - boiling points, °C; age, s; water per year, 1
 * @returns °C, boiling point at its age
 * @throws OutOfRangeError where a figure of the fluid cannot be
 * Source: [fmvss-116], [common-practice]
 * @example
 * boilingPointAtAge(exampleSetUp.fluid) // => 188.692
 */
export function boilingPointAtAge(fluid: Fluid): number {
  const { dryBoilingPoint, wetBoilingPoint } = fluid;
  return boilingPoint({
    dryBoilingPoint,
    wetBoilingPoint: Math.min(wetBoilingPoint, dryBoilingPoint),
    water: waterShare(fluid),
  });
}
