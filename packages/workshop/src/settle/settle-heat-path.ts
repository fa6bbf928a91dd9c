import { pistonMaterials } from '@standstill/braking';
import type { HeatPath } from '@standstill/braking';
import type { CaliperPart, PadPart, RotorPart } from '../job/job.ts';
import type { Draw } from './draw.ts';
import { settleFacts } from './settle-facts.ts';

interface HeatPathParts {
  readonly caliper: CaliperPart;
  readonly pad: PadPart;
  readonly rotor: RotorPart;
}

/** Where the heat of a corner goes from the contact: its figures stand at the parts that they belong to. */
export function settleHeatPath({ caliper, pad, rotor }: HeatPathParts, draw: Draw): HeatPath {
  const pistonHeat = pistonMaterials[caliper.pistonMaterial].heat.value;
  return {
    pistonHeat,
    ...settleFacts(pad.heat, draw),
    ...settleFacts(caliper.heat, draw),
    ...settleFacts(rotor.heat, draw),
  };
}
