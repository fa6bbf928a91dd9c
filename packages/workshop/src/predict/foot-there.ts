import { pedalTravel } from '@standstill/braking';
import type { SetUp } from '@standstill/braking';
import { bracketedRoot } from '@standstill/numerics';

/** The push that pedal and master cylinder have the travel for. */
export interface FootThere {
  /** N at the pedal pad; next to nothing where the first touch already takes the pedal to the floor. */
  readonly pedalForce: number;
  /** Set-up and force that give the pressure: without the booster where that jumps past what there is travel for. */
  readonly setUp: SetUp;
  /** N at the pedal pad of that set-up; 0 where no pressure at all has the travel. */
  readonly force: number;
}

/** N, the lightest push that is looked at. */
export const lightestFoot = 1;

/**
 * Answers the greatest push, up to the asked one, for whose pressure pedal and master cylinder have the travel.
 *
 * Equation: root of min(stroke left at the cylinder, travel there is − travel needed) over the force
 * Assumes: as `pedalTravel`; travel only grows with force. Where the booster's jump-in already takes all travel, the
 * pressure at the floor is below the jump-in, and the same push without booster gives it.
 *
 * @param setUp - the set-up
 * @param asked - N at the pedal pad
 * @returns forces, N
 */
export function footThere(setUp: SetUp, asked: number): FootThere {
  if (!pedalTravel({ setUp, pedalForce: asked }).bottomed) return { pedalForce: asked, setUp, force: asked };
  const boosted = greatestForce(setUp, asked);
  if (boosted > 0) return { pedalForce: boosted, setUp, force: boosted };
  const bare: SetUp = { ...setUp, booster: { kind: 'none' } };
  return { pedalForce: Math.min(asked, lightestFoot), setUp: bare, force: greatestForce(bare, asked) };
}

function greatestForce(setUp: SetUp, asked: number): number {
  const left = (pedalForce: number): number => {
    const { strokeReserve, travel } = pedalTravel({ setUp, pedalForce });
    return Math.min(strokeReserve, setUp.pedal.availableTravel - travel);
  };
  if (asked <= lightestFoot || left(lightestFoot) <= 0) return 0;
  if (left(asked) >= 0) return asked;
  return bracketedRoot(left, { low: lightestFoot, high: asked, tolerance: 0 });
}
