import { linearTable, requireRange } from '@standstill/numerics';
import type { Pad } from '../set-up/pad.ts';

export interface PadFrictionInput {
  readonly pad: Pad;
  /** °C, interface temperature. */
  readonly temperature: number;
}

/**
 * Answers the friction of a pad at an interface temperature.
 *
 * Equation: straight lines between the points of the pad's table.
 * Assumes: held constant beyond both ends of the table (real pads fall further); speed and pressure do not matter.
 * Valid: −60 to 1500 °C; frictions 0 to 1.5.
 *
 * @param input - pad with its friction table (°C, 1); interface temperature, °C
 * @returns 1, pad friction μ
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * padFriction({ pad: exampleSetUp.frontBrake.pad, temperature: 100 }) // => 0.4
 */
export function padFriction({ pad, temperature }: PadFrictionInput): number {
  requireRange('interface temperature', temperature, '°C', -60, 1500);
  const friction = linearTable(pad.frictionTemperatures, pad.frictions, temperature);
  return requireRange('pad friction', friction, '', 0, 1.5);
}
