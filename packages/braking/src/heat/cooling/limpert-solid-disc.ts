import { requireRange } from '@standstill/numerics';

export interface DiscInAirInput {
  /** D, m, outer diameter. */
  readonly diameter: number;
  /** v, m/s, speed of the car. */
  readonly speed: number;
  /** k, W/(m K), conductivity of the air. */
  readonly airConductivity: number;
  /** ν, m²/s, kinematic viscosity of the air. */
  readonly airViscosity: number;
}

/** Re above which the turbulent branch holds. */
const transition = 2.4e5;

/**
 * Answers how well the outer faces of a disc give heat to the air while the car drives, by Limpert.
 *
 * Equation: h = 0.70 (k/D) Re^0.55 below Re = 2.4e5, h = 0.04 (k/D) Re^0.8 above; Re = v D / ν.
 * Assumes: a disc in the open wheel, car speed as the speed of the air. The two branches do not meet: at the
 * transition the coefficient steps up by about a quarter, as in the source.
 * Valid: speed 0 to 150 m/s; zero at zero speed, where `stillAirFace` takes over.
 *
 * @param input - D, outer diameter, m; v, speed of the car, m/s; k, W/(m K), and ν, m²/s, of the air
 * @returns W/(m² K), coefficient of the faces
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * limpertSolidDisc({ diameter: 0.3, speed: 10, airConductivity: 0.026, airViscosity: 1.57e-5 }) // => 48.7104
 */
export function limpertSolidDisc(input: DiscInAirInput): number {
  const diameter = requireRange('outer diameter', input.diameter, 'm', 0.05, 1);
  const speed = requireRange('speed', input.speed, 'm/s', 0, 150);
  const conductivity = requireRange('air conductivity', input.airConductivity, 'W/(m K)', 0.005, 0.1);
  const reynolds = (speed * diameter) / requireRange('air viscosity', input.airViscosity, 'm²/s', 1e-6, 1e-2);
  const nusselt = reynolds < transition ? 0.7 * Math.pow(reynolds, 0.55) : 0.04 * Math.pow(reynolds, 0.8);
  return (conductivity / diameter) * nusselt;
}
