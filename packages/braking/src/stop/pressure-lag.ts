import { requireRange } from '@standstill/numerics';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Booster } from '../set-up/booster.ts';
import type { Fluid } from '../set-up/fluid.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { compressedAir } from '../travel/compressed-air.ts';
import { compressedFluid } from '../travel/compressed-fluid.ts';
import { cornerVolumes } from '../travel/corner-volumes.ts';

export interface PressureLagInput {
  readonly setUp: SetUp;
  /** p, Pa, front line pressure that is built up. */
  readonly frontPressure: number;
  /** p, Pa, rear line pressure that is built up. */
  readonly rearPressure: number;
}

/** Pa s, dynamic viscosity of glycol fluid near 20 °C (assumed). */
const fluidViscosity = 0.015;

/** Pa: at less than this, running clearance and air would count for more than they do in a stop (assumed). */
const leastPressure = 1e6;

/** s, how far a booster's output trails its valve (assumed, by kind). */
export const boosterLags: Readonly<Record<Booster['kind'], number>> = {
  none: 0,
  vacuum: 0.05,
  hydraulic: 0.02,
};

/**
 * Answers how far the line pressure trails the foot, as one first-order lag.
 *
 * Equation: τ = τ_booster + max over the axles of R C; R = 128 η ℓ / (π d⁴) of one corner's tube, C = V(p) / p of one
 * corner, V by `cornerVolumes` and a quarter of the system's fluid and air, at 1 MPa or more.
 * Assumes: laminar flow in the tube; hoses, ports and valves do not throttle; the booster's lag is a constant of its kind
 * (0.05 s vacuum, 0.02 s hydraulic, 0 none), assumed; fluid viscosity 15 mPa s.
 * Valid: warm fluid; a cold or old one is slower. The slower axle decides for both.
 *
 * @param input - set-up; p, pressures in the front and rear brakes that are built up, Pa
 * @returns s, time constant
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * pressureLag({ setUp: exampleSetUp, frontPressure: 5e6, rearPressure: 3.7e6 }) // => 0.0526058
 */
export function pressureLag({ setUp, frontPressure, rearPressure }: PressureLagInput): number {
  const front = lineLag(setUp.frontBrake, setUp.fluid, frontPressure);
  const rear = lineLag(setUp.rearBrake, setUp.fluid, rearPressure);
  return boosterLags[setUp.booster.kind] + Math.max(front, rear);
}

/**
 * Answers how far the pressure at one corner trails the pressure at the master cylinder.
 *
 * Equation: τ = R C, as in `pressureLag`.
 * Assumes: as `pressureLag`.
 *
 * @param brake - brake of the axle, one corner's parts
 * @param fluid - fluid of the whole system
 * @param pressure - p, Pa, pressure that is built up
 * @returns s, time constant
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * lineLag(exampleSetUp.frontBrake, exampleSetUp.fluid, 5e6) // => 0.00169792
 */
export function lineLag(brake: AxleBrake, fluid: Fluid, pressure: number): number {
  const length = requireRange('tube length', brake.tube.length, 'm', 0, 20);
  const diameter = requireRange('tube inner diameter', brake.tube.innerDiameter, 'm', 0.001, 0.02);
  const resistance = (128 * fluidViscosity * length) / (Math.PI * diameter ** 4);
  const built = Math.max(leastPressure, pressure);
  return (resistance * cornerVolume(brake, fluid, built)) / built;
}

/** m³ that one corner swallows, a quarter of the system's fluid and air with it. */
function cornerVolume(brake: AxleBrake, fluid: Fluid, pressure: number): number {
  const { clearance, caliper, pads, hose, tube } = cornerVolumes({ brake, pressure });
  const squeezed = compressedFluid({ volume: fluid.volume / 4, bulkModulus: fluid.bulkModulus, pressure });
  const air = compressedAir({ volume: fluid.trappedAir / 4, pressure });
  return clearance + caliper + pads + hose + tube + squeezed + air;
}
