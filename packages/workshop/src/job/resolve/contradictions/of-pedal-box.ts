import type { BoosterPart, PedalPart } from '../../job.ts';
import type { Finding } from '../../reading/finding.ts';
import { amount, contradiction } from './contradiction.ts';

/** A pedal that is on the floor before it moves anything. */
export function ofPedal({ facts: { freePlay, availableTravel } }: PedalPart): Finding[] {
  if (freePlay.value < availableTravel.value) return [];
  const size = amount(availableTravel.value, 'travel');
  return [
    contradiction({
      known: freePlay,
      kind: 'travel',
      why: `all of the pedal's travel of ${size}`,
      accepted: `less than ${size}`,
    }),
  ];
}

/** A vacuum booster jumps in before it runs out: the jump can't be more than the diaphragm can ever give. */
export function ofBooster(booster: BoosterPart): Finding[] {
  if (booster.type !== 'vacuum') return [];
  const { jumpInForce, diaphragmDiameter, vacuum, efficiency } = booster.facts;
  const most = (Math.PI / 4) * diaphragmDiameter.value ** 2 * vacuum.value * efficiency.value;
  // One that nobody stated is cut to what there is.
  if (jumpInForce.origin === 'assumed' || jumpInForce.value < most) return [];
  const size = amount(most, 'force');
  return [
    contradiction({
      known: jumpInForce,
      kind: 'force',
      why: `more than the diaphragm can give at its vacuum, ${size}, so that the knee would lie below the jump-in`,
      accepted: `less than ${size}`,
    }),
  ];
}
