import { requireRange } from '@standstill/numerics';

export interface FrictionBand {
  /** 1, not over this above the band's low end. */
  readonly low: number;
  /** 1, greatest friction of the band. */
  readonly high: number;
}

/**
 * Bands of the letters on the edge of a pad: the first letter is for the normal friction, the mean at 93, 121, 149 and
 * 204 °C, the second for the hot one. They come from a small sample on a test machine and say nothing of a car's brakes.
 *
 * Source: [sae-j866]
 */
export const frictionCodes = {
  C: { low: 0, high: 0.15 },
  D: { low: 0.15, high: 0.25 },
  E: { low: 0.25, high: 0.35 },
  F: { low: 0.35, high: 0.45 },
  G: { low: 0.45, high: 0.55 },
  H: { low: 0.55, high: 1 },
} as const satisfies Readonly<Record<string, FrictionBand>>;

export type FrictionCode = keyof typeof frictionCodes;

const normalTemperatures = [93, 121, 149, 204];

/**
 * Answers which letter a friction falls under.
 *
 * Equation: the letter with low < μ ≤ high.
 * Valid: friction above 0, up to 1.
 *
 * @param friction - μ, 1, mean friction
 * @returns the letter
 * @throws OutOfRangeError where the friction cannot be
 * Source: [sae-j866]
 * @example
 * frictionCode(0.41) // => 'F'
 */
export function frictionCode(friction: number): FrictionCode {
  requireRange('friction', friction, '', 1e-9, 1);
  const letters = Object.keys(frictionCodes) as FrictionCode[];
  return letters.find((letter) => friction <= frictionCodes[letter].high) ?? 'H';
}

/**
 * Answers the letter for a friction table's normal friction.
 *
 * Equation: mean of μ at 93, 121, 149 and 204 °C.
 * Assumes: the table stands for what the test machine would find, which it need not.
 * Valid: friction above 0, up to 1.
 *
 * @param frictionAt - μ, 1, over the temperature in °C
 * @returns the first letter of the code
 * @throws OutOfRangeError where the friction cannot be
 * Source: [sae-j866]
 * @example
 * normalFrictionCode(() => 0.34) // => 'E'
 */
export function normalFrictionCode(frictionAt: (temperature: number) => number): FrictionCode {
  const sum = normalTemperatures.reduce((total, temperature) => total + frictionAt(temperature), 0);
  return frictionCode(sum / normalTemperatures.length);
}
