import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Fluid } from '../set-up/fluid.ts';
import { compressedAir } from './compressed-air.ts';
import { compressedFluid } from './compressed-fluid.ts';
import { cornerVolumes } from './corner-volumes.ts';

/** Fluid that both corners of an axle swallow, by part. */
export interface AxleVolumes {
  /** m³. */
  readonly clearance: number;
  /** m³. */
  readonly caliper: number;
  /** m³. */
  readonly pads: number;
  /** m³. */
  readonly hoses: number;
  /** m³. */
  readonly tubes: number;
  /** m³. */
  readonly fluid: number;
  /** m³. */
  readonly air: number;
  /** m³, sum of the parts. */
  readonly total: number;
  readonly hoseBeyondTable: boolean;
}

export interface AxleVolumesInput {
  readonly brake: AxleBrake;
  readonly fluid: Fluid;
  /** p, Pa, line pressure at this axle. */
  readonly pressure: number;
  /** n of the trapped air, 1 slow to 1.4 fast; 1 where not given. */
  readonly airExponent?: number | undefined;
}

/**
 * Answers how much fluid the two corners of an axle swallow at a line pressure, part by part.
 *
 * Equation: twice `cornerVolumes`, and half of `compressedFluid` and `compressedAir` of the whole system.
 * Assumes: fluid and trapped air lie half at each axle (their place is seldom known); air shrinks slowly unless its
 * exponent is given.
 * Valid: as `cornerVolumes`.
 *
 * @param input - brake of the axle; fluid of the whole system; p, line pressure, Pa; n, exponent of the air, 1
 * @returns m³ by part and in all, and whether the hoses are past their stated pressures
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * axleVolumes({ brake: exampleSetUp.frontBrake, fluid: exampleSetUp.fluid, pressure: 5e6 }).total // => 2.42764e-06
 */
export function axleVolumes({ brake, fluid, pressure, airExponent = 1 }: AxleVolumesInput): AxleVolumes {
  const corner = cornerVolumes({ brake, pressure });
  const clearance = 2 * corner.clearance;
  const caliper = 2 * corner.caliper;
  const pads = 2 * corner.pads;
  const hoses = 2 * corner.hose;
  const tubes = 2 * corner.tube;
  const squeezed = compressedFluid({ volume: fluid.volume / 2, bulkModulus: fluid.bulkModulus, pressure });
  const air = compressedAir({ volume: fluid.trappedAir / 2, pressure, exponent: airExponent });
  const total = clearance + caliper + pads + hoses + tubes + squeezed + air;
  const { hoseBeyondTable } = corner;
  return { clearance, caliper, pads, hoses, tubes, fluid: squeezed, air, total, hoseBeyondTable };
}
