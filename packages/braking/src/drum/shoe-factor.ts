import { requireRange } from '@standstill/numerics';
import type { ShoeGeometry } from '../set-up/drum-brake.ts';

export interface ShoeFactorInput {
  readonly shoe: ShoeGeometry;
  /** μ of the lining, 1. */
  readonly friction: number;
  /** Leading: the drum turns from the cylinder towards the pivot and presses the shoe on by itself. */
  readonly direction: 'leading' | 'trailing';
}

/** Share of the friction at which a leading shoe would hold itself up to which the formula is trusted (assumed). */
const nearestToGrabbing = 0.92;

/**
 * Answers how much a shoe multiplies the force of its cylinder piston: drag at the drum over that force.
 *
 * Equation: S = μ G c / (a A ∓ μ B), upper sign leading; G = cos θ_1 − cos θ_2; A = (θ_2 − θ_1)/2 − (sin 2θ_2 − sin
 * 2θ_1)/4; B = G − (a/2)(sin² θ_2 − sin² θ_1); a and c over the drum's radius.
 * Assumes: a stiff shoe on a fixed pivot, face pressure that grows with the sine of the angle from the pivot.
 * Valid: friction from 0 to 92 % of the one at which a leading shoe would hold itself without any push.
 *
 * @param input - shoe geometry (lengths over the drum's radius, 1; angles, rad); μ, lining friction, 1; direction
 * @returns S, 1, drag force at the drum over force of the cylinder piston
 * @throws OutOfRangeError where an input cannot be, and where the shoe would grab
 * Source: [shigley]
 * @example
 * shoeFactor({ shoe: drumClasses.simplex.shoes, friction: 0.38, direction: 'leading' }) // => 1.50833
 */
export function shoeFactor({ shoe, friction, direction }: ShoeFactorInput): number {
  const { moment, push, drag } = shoeMoments(shoe);
  const most = direction === 'leading' ? mostLiningFriction(shoe) : 1.5;
  const mu = requireRange('lining friction', friction, '', 0, most);
  const sign = direction === 'leading' ? -1 : 1;
  return (mu * push) / (moment + sign * mu * drag);
}

/**
 * Answers up to which lining friction a leading shoe can be computed: past it the brake is close to holding itself.
 *
 * Equation: 92 % of `grabbingFriction`, at most 1.5.
 * Assumes: the 92 % is ours, short of where the factor runs away.
 * Valid: as `shoeFactor`.
 *
 * @param shoe - shoe geometry (lengths over the drum's radius, 1; angles, rad)
 * @returns 1, friction
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * mostLiningFriction(drumClasses.simplex.shoes) // => 0.742085
 */
export function mostLiningFriction(shoe: ShoeGeometry): number {
  return Math.min(1.5, nearestToGrabbing * grabbingFriction(shoe));
}

/**
 * Answers the lining friction at which a leading shoe would hold itself without any push of its cylinder.
 *
 * Equation: μ = a A / B, as in `shoeFactor`.
 * Valid: as `shoeFactor`.
 *
 * @param shoe - shoe geometry (lengths over the drum's radius, 1; angles, rad)
 * @returns 1, friction; Infinity where the shoe never does
 * @throws OutOfRangeError where an input cannot be
 * Source: [shigley]
 * @example
 * grabbingFriction(drumClasses.simplex.shoes) // => 0.806614
 */
export function grabbingFriction(shoe: ShoeGeometry): number {
  const { moment, drag } = shoeMoments(shoe);
  return drag > 0 ? moment / drag : Infinity;
}

function shoeMoments({ pivotDistance, leverArm, liningStart, liningEnd }: ShoeGeometry): {
  readonly moment: number;
  readonly push: number;
  readonly drag: number;
} {
  const a = requireRange('pivot distance over drum radius', pivotDistance, '', 0.3, 1.2);
  const c = requireRange('lever arm over drum radius', leverArm, '', 0.5, 2.4);
  const start = requireRange('start of the lining', liningStart, 'rad', 0, 2);
  const end = requireRange('end of the lining', liningEnd, 'rad', start + 0.1, Math.PI);
  const around = Math.cos(start) - Math.cos(end);
  const normal = (end - start) / 2 - (Math.sin(2 * end) - Math.sin(2 * start)) / 4;
  const drag = around - (a / 2) * (Math.sin(end) ** 2 - Math.sin(start) ** 2);
  return { moment: a * normal, push: around * c, drag };
}
