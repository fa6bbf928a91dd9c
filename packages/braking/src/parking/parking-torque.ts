import { requireRange } from '@standstill/numerics';
import type { ParkingBrake } from './parking-brake.ts';

export interface ParkingTorqueInput {
  readonly brake: ParkingBrake;
  /** N, of hand or foot. */
  readonly force: number;
}

/**
 * Answers the torque by which a parking brake holds ONE wheel.
 *
 * Equation: cable F_c = F i η / 2 at each wheel; shoes T = C* F_c i_s r; caliper T = 2 μ F_c i_c r_e.
 * Assumes: an equalizer shares the pull evenly; friction at rest as when sliding cold; the same torque both ways.
 * Valid: force up to 2000 N.
 *
 * @param input - parking brake; F, force of hand or foot, N
 * @returns N m, holding torque of one wheel
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * parkingTorque({ brake: { kind: 'caliper', leverRatio: 6, cableEfficiency: 0.8, clampRatio: 6, friction: 0.36, effectiveRadius: 0.11 }, force: 400 }) // => 456.192
 */
export function parkingTorque({ brake, force }: ParkingTorqueInput): number {
  requireRange('parking brake force', force, 'N', 0, 2000);
  requireRange('lever ratio', brake.leverRatio, '', 0.5, 60);
  requireRange('cable efficiency', brake.cableEfficiency, '', 0.05, 1);
  const pull = (force * brake.leverRatio * brake.cableEfficiency) / 2;
  if (brake.kind === 'caliper') {
    const friction = requireRange('pad friction', brake.friction, '', 0, 1.5);
    const radius = requireRange('effective radius', brake.effectiveRadius, 'm', 0.03, 0.4);
    return (
      2 * friction * pull * requireRange('clamp over cable pull', brake.clampRatio, '', 0.5, 200) * radius
    );
  }
  const factor = requireRange('brake factor', brake.brakeFactor, '', 0, 50);
  const radius = requireRange('drum radius', brake.drumRadius, 'm', 0.03, 0.3);
  return factor * pull * requireRange('shoe lever ratio', brake.shoeLeverRatio, '', 0.5, 20) * radius;
}
