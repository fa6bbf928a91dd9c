import { requireRange } from '@standstill/numerics';
import type { DiscInAirInput } from './limpert-solid-disc.ts';

/**
 * Answers how well the outside of a brake drum gives heat to the air while the car drives, by Limpert.
 *
 * Equation: h = 0.10 (k/D) Re^(2/3); Re = v D / ν.
 * Assumes: a plain drum in an open wheel, car speed as the speed of the air; fins are not counted.
 * Valid: speed 0 to 150 m/s; zero at zero speed, where `stillAirFace` takes over.
 *
 * @param input - D, outer diameter, m; v, speed of the car, m/s; k, W/(m K), and ν, m²/s, of the air
 * @returns W/(m² K), coefficient of the outside
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * limpertDrum({ diameter: 0.25, speed: 25, airConductivity: 0.026, airViscosity: 1.57e-5 }) // => 56.2799
 */
export function limpertDrum(input: DiscInAirInput): number {
  const diameter = requireRange('outer diameter', input.diameter, 'm', 0.05, 1);
  const speed = requireRange('speed', input.speed, 'm/s', 0, 150);
  const conductivity = requireRange('air conductivity', input.airConductivity, 'W/(m K)', 0.005, 0.1);
  const reynolds = (speed * diameter) / requireRange('air viscosity', input.airViscosity, 'm²/s', 1e-6, 1e-2);
  return 0.1 * (conductivity / diameter) * Math.cbrt(reynolds * reynolds);
}
