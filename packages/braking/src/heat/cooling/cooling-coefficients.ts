import { requireRange } from '@standstill/numerics';
import type { Road } from '../../set-up/road.ts';
import type { Rotor } from '../../set-up/rotor.ts';
import { limpertDrum } from './limpert-drum.ts';
import { limpertSolidDisc } from './limpert-solid-disc.ts';
import { mcPheeJohnsonRange, mcPheeJohnsonVanes } from './mcphee-johnson-vanes.ts';
import { radiationCoefficient } from './radiation-coefficient.ts';
import { stillAirFace } from './still-air-face.ts';

export interface CoolingInput {
  readonly rotor: Rotor;
  readonly road: Road;
  /** v, m/s. */
  readonly speed: number;
  /** r, m, rolling radius of the tire. */
  readonly rollingRadius: number;
  /** °C, of the rotor's faces. */
  readonly temperature: number;
}

export interface CoolingCoefficients {
  /** W/(m² K), outer faces. */
  readonly face: number;
  /** W/(m² K), vanes and vent faces; zero on a solid rotor. */
  readonly vent: number;
  readonly faceBy: 'Limpert' | 'McAdams, still air' | 'none';
  readonly ventBy: 'McPhee and Johnson 2008' | 'Limpert, drum' | 'McAdams, still air' | 'none';
  /** False where a chosen correlation is used beyond the range in which it was measured. */
  readonly insideRange: boolean;
}

/** k, W/(m K), of air near 27 °C. */
const airConductivity = 0.026;
/** Pa s, dynamic viscosity of air near 27 °C. */
const airDynamicViscosity = 1.85e-5;

/**
 * Answers how well a rotor gives heat to the air at a speed, and by whose correlation.
 *
 * Equation: face: the larger of `limpertSolidDisc` and `stillAirFace`; vent: `mcPheeJohnsonVanes` at ω = v / r.
 * A drum: the larger of `limpertDrum` and `stillAirFace` with `radiationCoefficient` on the outside of its wall, as vent.
 * Assumes: air properties near 27 °C, its density from the road; wheel and splash shield are not counted.
 * Valid: speed 0 to 150 m/s; `insideRange` is false where a vented rotor turns slower or faster than was measured.
 *
 * @param input - rotor; road with air density, kg/m³, and temperature, °C; v, speed, m/s; r, m; face temperature, °C
 * @returns W/(m² K), coefficients of faces and vent, the names of the correlations and whether they are in range
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert], [mcphee-2008], [mcadams]
 * @example
 * coolingCoefficients({ rotor: exampleSetUp.frontBrake.rotor, road: exampleRoad, speed: 25, rollingRadius: 0.31, temperature: 200 }).face // => 124.612
 */
export function coolingCoefficients(input: CoolingInput): CoolingCoefficients {
  const { rotor, road, speed } = input;
  const diameter = rotor.outerDiameter;
  const airViscosity = airDynamicViscosity / requireRange('air density', road.airDensity, 'kg/m³', 0.1, 3);
  const driving = limpertSolidDisc({ diameter, speed, airConductivity, airViscosity });
  const still = stillAirFace({ excess: input.temperature - road.airTemperature, height: diameter });
  if (rotor.kind === 'drum') {
    const outside = limpertDrum({ diameter, speed, airConductivity, airViscosity });
    return drumCooling(
      input,
      Math.max(outside, still),
      outside >= still ? 'Limpert, drum' : 'McAdams, still air',
    );
  }
  const faceBy = driving >= still ? 'Limpert' : 'McAdams, still air';
  return { face: Math.max(driving, still), faceBy, ...ventCooling(input) };
}

/** A drum loses heat by the outside of its wall alone, to the air and by radiation; its inside is closed. */
function drumCooling(
  { rotor, road, temperature }: CoolingInput,
  convection: number,
  ventBy: CoolingCoefficients['ventBy'],
): CoolingCoefficients {
  const { emissivity } = rotor;
  const radiation = radiationCoefficient({ emissivity, temperature, surroundings: road.airTemperature });
  return { face: 0, faceBy: 'none', vent: convection + radiation, ventBy, insideRange: true };
}

function ventCooling({
  rotor,
  speed,
  rollingRadius,
}: CoolingInput): Omit<CoolingCoefficients, 'face' | 'faceBy'> {
  if (rotor.kind === 'solid') return { vent: 0, ventBy: 'none', insideRange: true };
  const rate = speed / requireRange('rolling radius', rollingRadius, 'm', 0.1, 1);
  const insideRange = rate >= mcPheeJohnsonRange.low && rate <= mcPheeJohnsonRange.high;
  return { vent: mcPheeJohnsonVanes(rate), ventBy: 'McPhee and Johnson 2008', insideRange };
}
