import { requireRange } from '@standstill/numerics';
import { boreArea } from '../foot-to-pressure/bore-area.ts';
import type { MasterCylinder } from '../set-up/master-cylinder.ts';

export interface TravelPerVolume {
  /** m/m³, rod travel per volume that the front axle swallows. */
  readonly front: number;
  /** m/m³, rod travel per volume that the rear axle swallows. */
  readonly rear: number;
}

/**
 * Answers how far the push rod moves for each volume that an axle swallows.
 *
 * Equation: tandem: 1 / A for both axles, the strokes of both pistons add; balance bar: b / A_f and (1 − b) / A_r, so
 * that the rod's work is the sum of both cylinders' work.
 * Assumes: a tandem cylinder feeds two circuits; which corners they feed does not matter to the sum, so a diagonal
 * split has the same travel. The balance bar swings freely.
 * Valid: bores 5 to 60 mm, bar share 0.05 to 0.95.
 *
 * @param masterCylinder - bores, m; b, share of the rod force on the front cylinder, 1
 * @returns m/m³, rod travel over volume, front and rear
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * travelPerVolume({ kind: 'tandem', bore: 0.02, stroke: 0.035, efficiency: 1 }).front // => 3183.1
 */
export function travelPerVolume(masterCylinder: MasterCylinder): TravelPerVolume {
  if (masterCylinder.kind === 'tandem') {
    const each = 1 / boreArea(masterCylinder.bore);
    return { front: each, rear: each };
  }
  const share = requireRange('balance bar front share', masterCylinder.frontForceShare, '', 0.05, 0.95);
  return {
    front: share / boreArea(masterCylinder.frontBore),
    rear: (1 - share) / boreArea(masterCylinder.rearBore),
  };
}
