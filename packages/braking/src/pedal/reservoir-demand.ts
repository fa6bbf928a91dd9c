import { requireRange } from '@standstill/numerics';
import { pistonArea } from '../corner/piston-area.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';

export interface ReservoirDemandInput {
  readonly frontBrake: AxleBrake;
  readonly rearBrake: AxleBrake;
  /** m of friction material worn off each front pad. */
  readonly frontWear: number;
  /** m of friction material worn off each rear pad. */
  readonly rearWear: number;
}

/**
 * Answers how much fluid the calipers take from the reservoir while the pads wear.
 *
 * Equation: V = 4 A_f w_f + 4 A_r w_r: two corners, two pads each, A the piston area of one side.
 * Assumes: the pistons follow the pads; rotor wear is not counted, and a drum takes nothing, since its adjuster makes up
 * for the wear of its linings. A floating caliper moves its pistons by both pads'
 * wear, a fixed one each side by its own: the volume is the same.
 * Valid: wear up to 30 mm.
 *
 * @param input - brakes of both axles (A, area of one side); w, wear of each front and of each rear pad, m
 * @returns m³ that the level in the reservoir falls by
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * reservoirDemand({ frontBrake: exampleSetUp.frontBrake, rearBrake: exampleSetUp.rearBrake, frontWear: 0.008, rearWear: 0.008 }) // => 0.000102341
 */
export function reservoirDemand({
  frontBrake,
  rearBrake,
  frontWear,
  rearWear,
}: ReservoirDemandInput): number {
  requireRange('wear of a front pad', frontWear, 'm', 0, 0.03);
  requireRange('wear of a rear pad', rearWear, 'm', 0, 0.03);
  return taken(frontBrake, frontWear) + taken(rearBrake, rearWear);
}

/** m³ of both corners of an axle, for m of wear of each pad. */
function taken({ rotor, caliper }: AxleBrake, wear: number): number {
  return rotor.kind === 'drum' ? 0 : 4 * pistonArea(caliper) * wear;
}
