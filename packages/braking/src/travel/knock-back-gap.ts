import { requireRange } from '@standstill/numerics';

/** What pushes the pads of one axle away from its rotors on a bend or a rough road. */
export interface Hubs {
  /** m, run-out of the rotor as mounted, whole sweep of a dial gauge at the pads. */
  readonly runOut: number;
  /** m, how far the rotor tilts at the pads within the play of the wheel bearing. */
  readonly bearingPlay: number;
  /** m, how far the axle shaft with the rotor can slide along itself. */
  readonly axleFloat: number;
}

/**
 * Answers by how much each pad stands further off its rotor on the first push after the rotor has moved about.
 *
 * Equation: c = (run-out + bearing play + axle float) / 2.
 * Assumes: the rotor's whole sideways movement has opened the gap between the two pads, half for each, and no seal has
 * drawn the pistons after it: an upper bound. The second push finds the gap that the seals roll back alone.
 * Valid: run-out and bearing play up to 1 mm, axle float up to 3 mm.
 *
 * @param hubs - run-out, bearing play and axle float, m
 * @returns m, extra clearance of one pad on the first push
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * knockBackGap({ runOut: 0.00005, bearingPlay: 0.00003, axleFloat: 0 }) // => 0.00004
 */
export function knockBackGap({ runOut, bearingPlay, axleFloat }: Hubs): number {
  requireRange('rotor run-out', runOut, 'm', 0, 0.001);
  requireRange('bearing play at the pads', bearingPlay, 'm', 0, 0.001);
  requireRange('axle float', axleFloat, 'm', 0, 0.003);
  return (runOut + bearingPlay + axleFloat) / 2;
}
