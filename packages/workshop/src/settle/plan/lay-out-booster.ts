import type { Booster, VacuumBooster } from '@standstill/braking';
import type { BoosterPart, VacuumBoosterPart } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { diaphragmArea, vacuumThere } from '../settle-hydraulics.ts';
import type { Draft } from './draft.ts';
import type { Refill } from './refill.ts';

/** Where the car is, m above the sea: as known, and in the present draw. */
export interface Altitude {
  readonly known: Known;
  value: number;
}

/** Puts a booster down for refilling; its vacuum follows from where the car is. */
export function layOutBooster(
  part: BoosterPart,
  fresh: Booster,
  altitude: Altitude,
  refill: Refill,
): Booster {
  if (part.type === 'hydraulic' && fresh.kind === 'hydraulic') refill.takeFacts(part.facts, fresh);
  if (part.type === 'vacuum' && fresh.kind === 'vacuum') layOutVacuum(part, fresh, altitude, refill);
  return fresh;
}

function layOutVacuum(
  part: VacuumBoosterPart,
  booster: Draft<VacuumBooster>,
  altitude: Altitude,
  refill: Refill,
): void {
  const { diaphragmDiameter, vacuum, ...facts } = part.facts;
  refill.takeFacts(facts, booster);
  const drawn = { diaphragmDiameter: diaphragmDiameter.value, vacuum: vacuum.value };
  refill.takeFacts({ diaphragmDiameter, vacuum }, drawn);
  refill.workOut([diaphragmDiameter], () => {
    booster.diaphragmArea = diaphragmArea(drawn.diaphragmDiameter);
  });
  refill.workOut([vacuum, altitude.known], () => {
    booster.vacuum = vacuumThere(part, drawn.vacuum, altitude.value);
  });
}
