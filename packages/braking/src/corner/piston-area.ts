import { requireRange } from '@standstill/numerics';
import type { Caliper } from '../set-up/caliper.ts';

/**
 * Answers the piston area on ONE side of a caliper, floating or fixed.
 *
 * Equation: A = Σ π d² / 4 over the pistons of one side.
 * Valid: 1 to 12 pistons on a side, each 5 to 100 mm.
 *
 * @param caliper - caliper with d, diameters of the pistons on one side, m
 * @returns m², area on one side
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * pistonArea(exampleSetUp.frontBrake.caliper) // => 0.00229022
 */
export function pistonArea(caliper: Caliper): number {
  requireRange('number of pistons on one side', caliper.pistonDiameters.length, '', 1, 12);
  let sum = 0;
  for (const diameter of caliper.pistonDiameters) {
    requireRange('piston diameter', diameter, 'm', 0.005, 0.1);
    sum += diameter * diameter;
  }
  return (Math.PI / 4) * sum;
}
