import { requireRange } from '@standstill/numerics';

export interface CompressedFluidInput {
  /** V, m³ under pressure. */
  readonly volume: number;
  /** B, Pa. */
  readonly bulkModulus: number;
  /** p, Pa. */
  readonly pressure: number;
}

/**
 * Answers how much a volume of fluid shrinks under pressure.
 *
 * Equation: ΔV = V p / B.
 * Assumes: one modulus for the whole volume at its temperature.
 * Valid: volume up to 5 liters, B from 0.2 to 5 GPa.
 *
 * @param input - V, volume, m³; B, isothermal bulk modulus, Pa; p, pressure, Pa
 * @returns m³ that the master cylinder must make up
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * compressedFluid({ volume: 120e-6, bulkModulus: 2e9, pressure: 10e6 }) // => 6e-7
 */
export function compressedFluid({ volume, bulkModulus, pressure }: CompressedFluidInput): number {
  requireRange('fluid volume', volume, 'm³', 0, 0.005);
  requireRange('bulk modulus of the fluid', bulkModulus, 'Pa', 0.2e9, 5e9);
  requireRange('line pressure', pressure, 'Pa', 0, 60e6);
  return (volume * pressure) / bulkModulus;
}
