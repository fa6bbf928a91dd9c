import { requireRange } from '@standstill/numerics';
import type { DrumBrake } from '../set-up/drum-brake.ts';
import { shoeFactor } from './shoe-factor.ts';

/** μ, 1, lining friction at which brake factors are stated here. */
export const brakeFactorFriction = 0.38;

export interface BrakeFactorInput {
  readonly drum: Pick<DrumBrake, 'arrangement' | 'shoes' | 'brakeFactor'>;
  /** μ of the lining, 1. */
  readonly friction: number;
}

/**
 * Answers the brake factor of a drum brake at a lining friction: force at the drum over force of one cylinder piston.
 *
 * Equation: C*(μ) = C*_0 F(μ) / F(0.38); F = S_l + S_t simplex, 2 S_l duplex, S_l + S_l (c − a + S_l) / a duo-servo, with
 * S by `shoeFactor` and lengths over the drum's radius.
 * Assumes: the stated factor C*_0 sets the level and the geometry the way in which it grows with friction: more than in
 * step, since a leading shoe helps itself. In a duo-servo the first shoe's link pushes the second one; the cylinder's own
 * push on the second shoe, close to its anchor, is left out.
 * Valid: as `shoeFactor`.
 *
 * @param input - arrangement, shoe geometry and factor at 0.38, 1; μ, lining friction, 1
 * @returns C*, 1; a disc brake has 2 μ
 * @throws OutOfRangeError where an input cannot be
 * Source: [shigley], [bosch-drums]
 * @example
 * brakeFactor({ drum: { ...drumClasses.simplex, brakeFactor: 2 }, friction: 0.42 }) // => 2.35969
 */
export function brakeFactor({ drum, friction }: BrakeFactorInput): number {
  const stated = requireRange('brake factor at a lining friction of 0.38', drum.brakeFactor, '', 0.5, 12);
  return (stated * geometricFactor(drum, friction)) / geometricFactor(drum, brakeFactorFriction);
}

/**
 * Answers the brake factor that shoe geometry alone gives.
 *
 * Equation: as `brakeFactor`, F(μ).
 * Assumes: as `brakeFactor`.
 * Valid: as `shoeFactor`.
 *
 * @param drum - arrangement and shoe geometry (lengths over the drum's radius, 1; angles, rad)
 * @param friction - μ, lining friction, 1
 * @returns F, 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [shigley]
 * @example
 * geometricFactor(drumClasses.duplex, 0.38) // => 3.01667
 */
export function geometricFactor(
  { arrangement, shoes }: Pick<DrumBrake, 'arrangement' | 'shoes'>,
  friction: number,
): number {
  const leading = shoeFactor({ shoe: shoes, friction, direction: 'leading' });
  if (arrangement === 'duplex') return 2 * leading;
  if (arrangement === 'simplex')
    return leading + shoeFactor({ shoe: shoes, friction, direction: 'trailing' });
  const { pivotDistance, leverArm } = shoes;
  return leading + (leading * (leverArm - pivotDistance + leading)) / pivotDistance;
}
