import { linearTable, requireRange } from '@standstill/numerics';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Caliper } from '../set-up/caliper.ts';
import type { DrumBrake } from '../set-up/drum-brake.ts';
import { usualHeatPath } from '../set-up/heat-path.ts';
import type { Pad } from '../set-up/pad.ts';
import type { Rotor } from '../set-up/rotor.ts';
import { brakeFactor, brakeFactorFriction } from './brake-factor.ts';

/** Points between two of the lining's friction table, so that a curve through them stays close to C*(μ). */
const finer = 16;

/**
 * Answers the disc brake that acts like a drum brake: with it a drum goes through stop, travel, balance and heat as any
 * other brake does.
 *
 * Equation: 2 μ' A' r_e η = C*(μ) A r η with A' = k A, μ' = C*(μ) / (2 k), k = C*(0.38) / (2 · 0.38), r_e = r; so at 0.38
 * the disc's friction is the lining's. Swept band: radial height w / 2, so that both faces together are the drum's 2 π r w.
 * Fluid: the gap and the squeeze are divided by k and multiplied by the shoe's lever c / a, so that the volumes are the drum's.
 * Assumes: one wall, rubbed inside and cooled outside (rotor kind 'drum'); the drum does not grow or warp with heat. The
 * table is linear between 16 points for each step of the lining's own.
 * Valid: as `brakeFactor` at every friction of the table; drum radius 50 to 300 mm, width 10 to 200 mm.
 *
 * @param drum - the drum brake
 * @returns the record that the rest of the program takes, SI; 2.5 kg stand for shoes and backing plate
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula], [limpert]
 * @example
 * equivalentDisc(exampleDrum).pad.radialHeight // => 0.0225
 */
export function equivalentDisc(drum: DrumBrake): AxleBrake {
  requireRange('drum radius', drum.radius, 'm', 0.05, 0.3);
  requireRange('lining width', drum.width, 'm', 0.01, 0.2);
  requireRange('bore of the wheel cylinder', drum.cylinderBore, 'm', 0.01, 0.06);
  const amplification = drum.brakeFactor / (2 * brakeFactorFriction);
  const lever = drum.shoes.leverArm / drum.shoes.pivotDistance;
  return {
    kind: 'disc',
    caliper: caliperOf(drum, amplification),
    pad: padOf(drum, amplification, lever),
    rotor: rotorOf(drum),
    hose: drum.hose,
    tube: drum.tube,
    heatPath: { ...usualHeatPath, plateConductance: tipConductance, bodyConductance: tipConductance },
    runningClearance: (drum.shoeClearance * lever) / amplification,
    pressureAssumption: 'uniform-wear',
  };
}

function caliperOf(drum: DrumBrake, amplification: number): Caliper {
  return {
    kind: 'floating',
    pistonDiameters: [drum.cylinderBore * Math.sqrt(amplification)],
    pushOutPressure: drum.pushOutPressure,
    efficiency: drum.efficiency,
    volumeCompliance: drum.volumeCompliance,
    mass: carrierMass,
  };
}

function padOf(drum: DrumBrake, amplification: number, lever: number): Pad {
  const frictionTemperatures = finerTemperatures(drum.frictionTemperatures);
  const frictions = frictionTemperatures.map((temperature) => {
    const friction = linearTable(drum.frictionTemperatures, drum.frictions, temperature);
    return brakeFactor({ drum, friction }) / (2 * amplification);
  });
  return {
    area: drum.liningArea,
    radialHeight: drum.width / 2,
    thickness: drum.liningThickness,
    frictionTemperatures,
    frictions,
    compressibility: (drum.compressibility * lever) / amplification,
    mass: drum.liningArea * (drum.liningThickness * drum.liningDensity + shoePlate),
    specificHeat: drum.liningSpecificHeat,
    conductivity: drum.liningConductivity,
    density: drum.liningDensity,
  };
}

/** kg, shoe webs and backing plate of one corner (assumed). */
const carrierMass = 2.5;
/** W/(m² K) of piston area: a shoe touches its cylinder and its anchor by thin tips alone (assumed). */
const tipConductance = 300;
/** kg/m², a steel shoe 3 mm thick behind the lining (assumed). */
const shoePlate = 0.003 * 7850;

function finerTemperatures(temperatures: readonly number[]): readonly number[] {
  return temperatures.flatMap((from, index) => {
    const to = temperatures[index + 1];
    if (to === undefined) return [from];
    return Array.from({ length: finer }, (_, step) => from + ((to - from) * step) / finer);
  });
}

function rotorOf(drum: DrumBrake): Rotor {
  const { radius, width, wallThickness, density } = drum;
  const sweptOuterRadius = radius + width / 4;
  return {
    kind: 'drum',
    outerDiameter: 2 * Math.max(radius + wallThickness, sweptOuterRadius),
    thickness: wallThickness,
    cheekThickness: wallThickness,
    sweptOuterRadius,
    mass: drum.mass,
    ringMass: 2 * Math.PI * radius * width * wallThickness * density,
    density,
    specificHeat: drum.specificHeat,
    specificHeatSlope: drum.specificHeatSlope,
    conductivity: drum.conductivity,
    emissivity: drum.emissivity,
  };
}
