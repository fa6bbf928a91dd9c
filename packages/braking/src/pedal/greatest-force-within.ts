import { bracketedRoot, requireRange } from '@standstill/numerics';

/** N, the lightest push that is looked at. */
const lightest = 1;

/**
 * Answers the greatest push, up to an asked one, for which something is left.
 *
 * Equation: root of left(F) between 1 N and the asked force.
 * Assumes: what is left only shrinks as the force grows.
 * Valid: asked force 1 to 5000 N.
 *
 * @param left - what is left at a force, N; any unit, negative where it is not there
 * @param asked - N at the pedal pad
 * @returns N at the pedal pad; 0 where not even 1 N has it
 * @throws OutOfRangeError where the force cannot be
 * Source: [textbook-formula]
 * @example
 * greatestForceWithin((force) => 300 - force, 500) // => 300
 */
export function greatestForceWithin(left: (force: number) => number, asked: number): number {
  requireRange('pedal force', asked, 'N', lightest, 5000);
  if (left(asked) >= 0) return asked;
  if (left(lightest) <= 0) return 0;
  return bracketedRoot(left, { low: lightest, high: asked, tolerance: 1e-9 });
}
