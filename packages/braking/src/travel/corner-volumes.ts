import { requireRange } from '@standstill/numerics';
import { pistonArea } from '../corner/piston-area.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import { hoseVolume } from './hose-volume.ts';
import { tubeVolume } from './tube-volume.ts';

/** Fluid that ONE corner swallows, by part. */
export interface CornerVolumes {
  /** m³. */
  readonly clearance: number;
  /** m³. */
  readonly caliper: number;
  /** m³. */
  readonly pads: number;
  /** m³. */
  readonly hose: number;
  /** m³. */
  readonly tube: number;
  readonly hoseBeyondTable: boolean;
}

export interface CornerVolumesInput {
  readonly brake: AxleBrake;
  /** p, Pa, line pressure at this corner. */
  readonly pressure: number;
}

/**
 * Answers how much fluid one corner swallows at a line pressure, part by part.
 *
 * Equation: clearance 2 c A min(1, p / p_0); caliper k p; pads 2 A s (p − p_0) A η / A_pad; hose and tube by
 * `hoseVolume` and `tubeVolume`.
 * Assumes: the running clearance c at both pads, which is what the seals roll the pistons back by after a push, is taken
 * up in step with pressure until push-out p_0. A floating
 * caliper moves its pistons by both gaps, a fixed one each side by its own: the volume is the same, A being one side's
 * area. The pad's squeeze s is linear.
 * Valid: clearance up to 3 mm, compressibility up to 1e-9 m/Pa, compliance up to 1e-11 m³/Pa.
 *
 * @param input - brake of the axle (one corner's parts); p, line pressure, Pa
 * @returns m³ by part, and whether the hose is past its stated pressures
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * cornerVolumes({ brake: exampleSetUp.frontBrake, pressure: 5e6 }).clearance // => 4.58044e-7
 */
export function cornerVolumes({ brake, pressure }: CornerVolumesInput): CornerVolumes {
  requireCorner(brake);
  requireRange('line pressure', pressure, 'Pa', 0, 60e6);
  const { caliper, pad } = brake;
  const area = pistonArea(caliper);
  const clamp = Math.max(0, pressure - caliper.pushOutPressure) * area * caliper.efficiency;
  const hose = hoseVolume(brake.hose, pressure);
  return {
    clearance: 2 * brake.runningClearance * area * takenUp(pressure, caliper.pushOutPressure),
    caliper: caliper.volumeCompliance * pressure,
    pads: (2 * area * pad.compressibility * clamp) / pad.area,
    hose: hose.volume,
    tube: tubeVolume(brake.tube, pressure),
    hoseBeyondTable: hose.beyondTable,
  };
}

/** Share of the running clearance taken up. */
function takenUp(pressure: number, pushOutPressure: number): number {
  if (pressure <= 0) return 0;
  return pressure >= pushOutPressure ? 1 : pressure / pushOutPressure;
}

function requireCorner({ caliper, pad, runningClearance }: AxleBrake): void {
  requireRange('running clearance', runningClearance, 'm', 0, 0.003);
  requireRange('push-out pressure', caliper.pushOutPressure, 'Pa', 0, 2e6);
  requireRange('caliper efficiency', caliper.efficiency, '', 0.1, 1);
  requireRange('caliper compliance', caliper.volumeCompliance, 'm³/Pa', 0, 1e-11);
  requireRange('pad compressibility', pad.compressibility, 'm/Pa', 0, 1e-9);
  requireRange('pad area', pad.area, 'm²', 1e-4, 0.1);
}
