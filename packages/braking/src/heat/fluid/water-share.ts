import { requireRange } from '@standstill/numerics';

export interface WaterShareInput {
  /** s since the fluid was filled in. */
  readonly age: number;
  /** Share of water by volume, 1, taken up in a year. */
  readonly waterPerYear: number;
}

/** s. */
const year = 31_557_600;
/** Share of water by volume, 1, at which glycol fluid in a car takes up hardly any more (from memory). */
export const mostWater = 0.08;

/**
 * Answers how much water a glycol brake fluid holds after some time in a car.
 *
 * Equation: w = w_m (1 − e^(−r t / w_m)): at first r t, in the end w_m = 8 %.
 * Assumes: filled in dry. Damp places, rubber hoses and heat change the rate more than anything here.
 * Valid: age 0 to 50 years; r 0 to 10 % a year.
 *
 * @param input - t, age, s; r, water per year, 1
 * @returns 1, share of water by volume
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * waterShare({ age: 6.31152e7, waterPerYear: 0.014 }) // => 0.0236250
 */
export function waterShare({ age, waterPerYear }: WaterShareInput): number {
  const years = requireRange('age of the fluid', age, 's', 0, 50 * year) / year;
  const rate = requireRange('water per year', waterPerYear, '', 0, 0.1);
  return mostWater * -Math.expm1((-rate * years) / mostWater);
}
