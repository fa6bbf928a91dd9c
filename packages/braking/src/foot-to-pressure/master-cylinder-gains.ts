import { requireRange } from '@standstill/numerics';
import type { MasterCylinder } from '../set-up/master-cylinder.ts';
import { boreArea } from './bore-area.ts';

/** Pressure over force of each circuit, before any rear valve. */
export interface MasterCylinderGains {
  /** Pa/N. */
  readonly front: number;
  /** Pa/N. */
  readonly rear: number;
}

/**
 * Answers how much pressure one newton on the master cylinder (or on the balance bar) makes in each circuit.
 *
 * Equation: tandem: η / (π D²/4); balance bar: η b / (π D_f²/4) and η (1 − b) / (π D_r²/4).
 * Assumes: the bar's share does not change with travel.
 * Valid: bores 5 to 60 mm, efficiency 0.1 to 1, bar share 0.05 to 0.95.
 *
 * @param masterCylinder - bores D, m; efficiency η, 1; b, share of the force on the front cylinder, 1
 * @returns Pa/N, pressure over force in the front and in the rear circuit
 * @throws OutOfRangeError where an input cannot be
 * Source: [brake-sheet]
 * @example
 * masterCylinderGains({ kind: 'tandem', bore: 0.02, stroke: 0.035, efficiency: 1 }).front // => 3183.10
 */
export function masterCylinderGains(masterCylinder: MasterCylinder): MasterCylinderGains {
  const efficiency = requireRange('master cylinder efficiency', masterCylinder.efficiency, '', 0.1, 1);
  if (masterCylinder.kind === 'tandem') {
    const gain = efficiency / boreArea(masterCylinder.bore);
    return { front: gain, rear: gain };
  }
  const share = requireRange('balance bar front share', masterCylinder.frontForceShare, '', 0.05, 0.95);
  return {
    front: (efficiency * share) / boreArea(masterCylinder.frontBore),
    rear: (efficiency * (1 - share)) / boreArea(masterCylinder.rearBore),
  };
}
