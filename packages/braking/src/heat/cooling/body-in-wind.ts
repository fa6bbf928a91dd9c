import { requireRange } from '@standstill/numerics';

export interface BodyInWindInput {
  /** v, m/s, speed of the car. */
  readonly speed: number;
  /** T, °C, of the body. */
  readonly temperature: number;
  /** °C, of the air. */
  readonly airTemperature: number;
  /** ρ, kg/m³, of the air. */
  readonly airDensity: number;
}

/** Share of the car's speed with which air passes a caliper inside its wheel (assumed). */
const windShare = 0.3;
/** m, size of the body across the wind (assumed). */
const size = 0.1;
/** W/(m K) and Pa s of air near 27 °C. */
const airConductivity = 0.026;
const airDynamicViscosity = 1.85e-5;
/** Re at which the second row of the table begins. */
const secondRow = 4e4;
/** W/(m² K), a dull body radiates near 100 °C (from memory). */
const radiation = 6;

/**
 * Answers how well a caliper's body gives heat to the air and to what is around it.
 *
 * Equation: h = (k / D) C Re^m + 6, Re = w v D / ν; C = 0.193, m = 0.618 below Re = 4e4, C = 0.027, m = 0.805 above; never
 * less than free air, 1.42 (ΔT / D)^0.25 + 6.
 * Assumes: a cylinder of 0.1 m across a wind of 0.3 of the car's speed; wheel, dust shield and ducts change that more than
 * any correlation.
 * Valid: speed 0 to 150 m/s.
 *
 * @param input - v, speed, m/s; T, body, °C; air, °C and kg/m³
 * @returns W/(m² K), coefficient of the body
 * @throws OutOfRangeError where an input cannot be
 * Source: [hilpert-1933], [mcadams]
 * @example
 * bodyInWind({ speed: 20, temperature: 100, airTemperature: 20, airDensity: 1.2 }) // => 40.4548
 */
export function bodyInWind(input: BodyInWindInput): number {
  const wind = windShare * requireRange('speed', input.speed, 'm/s', 0, 150);
  const density = requireRange('air density', input.airDensity, 'kg/m³', 0.1, 3);
  const reynolds = (wind * size * density) / airDynamicViscosity;
  const first = reynolds < secondRow;
  const nusselt = (first ? 0.193 : 0.027) * Math.pow(reynolds, first ? 0.618 : 0.805);
  const excess = Math.min(1500, Math.max(0, input.temperature - input.airTemperature));
  const still = 1.42 * Math.sqrt(Math.sqrt(excess / size));
  return radiation + Math.max(still, (airConductivity / size) * nusselt);
}
