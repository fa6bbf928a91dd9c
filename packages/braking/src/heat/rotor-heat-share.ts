import { requireRange } from '@standstill/numerics';
import { effusivity } from './effusivity.ts';
import { sweptArea, type RotorWithPad } from './swept-area.ts';

/**
 * Answers which share of the friction heat goes into the rotor; the pads take the rest.
 *
 * Equation: σ = e_r A_r / (e_r A_r + e_p A_p), e = √(k ρ c); A_r swept area and A_p pad area of one face.
 * Assumes: perfect contact, both bodies thick compared with the depth that heat reaches in the stop, mean face
 * temperatures equal. Properties at 20 °C. Pads that are hotter or cooler than the rotor at the start shift the share.
 * Valid: one stop from equal temperatures.
 *
 * @param parts - rotor and pad with conductivity, W/(m K), density, kg/m³, specific heat, J/(kg K), and areas, m²
 * @returns 1, share of the heat that the rotor takes
 * @throws OutOfRangeError where an input cannot be
 * Source: [charron-1943]
 * @example
 * rotorHeatShare({ rotor: exampleSetUp.frontBrake.rotor, pad: exampleSetUp.frontBrake.pad }) // => 0.981422
 */
export function rotorHeatShare(parts: RotorWithPad): number {
  const rotorPull = effusivity(parts.rotor) * sweptArea(parts);
  const padPull = effusivity(parts.pad) * requireRange('pad area', parts.pad.area, 'm²', 1e-5, 0.1);
  return rotorPull / (rotorPull + padPull);
}
