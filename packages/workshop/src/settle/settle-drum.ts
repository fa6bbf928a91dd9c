import { drumClassOf, equivalentDisc, mostLiningFriction, rotorMaterials } from '@standstill/braking';
import type { AxleBrake, DrumBrake, Hose, Tube } from '@standstill/braking';
import type { DrumPart } from '../job/job.ts';
import type { Draw } from './draw.ts';
import { settleFacts } from './settle-facts.ts';

/** A drum brake in plain numbers. */
export function drumBrakeOf(part: DrumPart, hose: Hose, tube: Tube, draw: Draw): DrumBrake {
  const { diameter, ...facts } = settleFacts(part.facts, draw);
  const iron = rotorMaterials.greyIron;
  const by = draw(part.friction.factor);
  const { shoes } = drumClassOf(part.type);
  const most = mostLiningFriction(shoes); // a draw past it grabs: it stays at the end, where the factor is many times the usual
  return {
    ...facts,
    arrangement: part.type,
    shoes,
    radius: diameter / 2,
    density: iron.density.value,
    specificHeat: iron.specificHeat.value,
    specificHeatSlope: iron.specificHeatSlope.value,
    conductivity: iron.conductivity.value,
    emissivity: iron.emissivity.value,
    frictionTemperatures: part.friction.at,
    frictions: part.friction.values.map((value) => Math.min(most, value * by)),
    liningSpecificHeat: lining.specificHeat,
    liningConductivity: lining.conductivity,
    liningDensity: lining.density,
    hose,
    tube,
  };
}

/** Molded lining: J/(kg K), W/(m K), kg/m³ (from memory). */
const lining = { specificHeat: 1000, conductivity: 0.8, density: 2000 } as const;

/** A drum brake as the disc brake that acts like it. */
export function settleDrum(part: DrumPart, hose: Hose, tube: Tube, draw: Draw): AxleBrake {
  return equivalentDisc(drumBrakeOf(part, hose, tube, draw));
}
