import { requireRange } from '@standstill/numerics';
import type { Booster, HydraulicBooster, VacuumBooster } from '../set-up/booster.ts';

/** What a booster adds to the input rod, as two numbers and a limit: assist = min(start + slope F, limit). */
export interface BoosterAssist {
  /** N, assist as soon as the rod is touched. */
  readonly start: number;
  /** 1, assist over rod force until run-out. */
  readonly slope: number;
  /** N, greatest assist. */
  readonly limit: number;
}

/**
 * Answers how much force a booster can add to the push rod, as start, slope and limit.
 *
 * Equation: vacuum: start = J, slope = k − 1, limit = A_d Δp η; hydraulic: start = 0, slope = k − 1, limit as stated;
 * none: all zero. A jump-in above the limit is cut to the limit.
 * Assumes: the valve opens at the first touch (its spring is not counted), gain is output rise over input rise.
 * Valid: gain 1 to 20; jump-in up to 5 kN; diaphragm up to 0.5 m²; vacuum up to 105 kPa below ambient.
 *
 * @param booster - the booster; gain k, 1; jump-in J, N; diaphragm area A_d, m²; vacuum Δp, Pa; efficiency η, 1
 * @returns start, N; slope, 1; limit, N
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * boosterAssist({ kind: 'vacuum', gain: 5, jumpInForce: 200, diaphragmArea: 0.05, vacuum: 70000, efficiency: 0.95 }).limit // => 3325
 */
export function boosterAssist(booster: Booster): BoosterAssist {
  if (booster.kind === 'vacuum') return vacuumAssist(booster);
  if (booster.kind === 'hydraulic') return hydraulicAssist(booster);
  return { start: 0, slope: 0, limit: 0 };
}

function vacuumAssist(booster: VacuumBooster): BoosterAssist {
  requireRange('booster gain', booster.gain, '', 1, 20);
  requireRange('booster jump-in force', booster.jumpInForce, 'N', 0, 5000);
  requireRange('booster diaphragm area', booster.diaphragmArea, 'm²', 0, 0.5);
  requireRange('booster vacuum', booster.vacuum, 'Pa', 0, 105_000);
  requireRange('booster efficiency', booster.efficiency, '', 0, 1);
  const limit = booster.diaphragmArea * booster.vacuum * booster.efficiency;
  return { start: Math.min(booster.jumpInForce, limit), slope: booster.gain - 1, limit };
}

function hydraulicAssist(booster: HydraulicBooster): BoosterAssist {
  requireRange('booster gain', booster.gain, '', 1, 20);
  requireRange('greatest booster assist', booster.greatestAssist, 'N', 0, 50_000);
  return { start: 0, slope: booster.gain - 1, limit: booster.greatestAssist };
}
