import { brakeFactorFriction, effectiveRadius, padFriction } from '@standstill/braking';
import type { ParkingBrake } from '@standstill/braking';
import type { Settled } from '../settle/settle.ts';

/** °C, at which a parked car's brakes are taken to be. */
const cold = 20;

/**
 * Answers the parking brake of a set-up with the friction that it meets at the rear brake.
 *
 * Assumes: pads and linings as cold as a mild day. A drum's cold factor follows from its equivalent disc, whose friction
 * is C* / (2 k) with k = C*(0.38) / 0.76.
 *
 * @param settled - the set-up
 * @returns the parking brake; null where none is known
 */
export function parkingBrakeOf({ parking, setUp }: Settled): ParkingBrake | null {
  if (parking === null) return null;
  const { leverRatio, cableEfficiency } = parking;
  const { rotor, pad, pressureAssumption: assumption } = setUp.rearBrake;
  if (parking.kind === 'caliper') {
    const { clampRatio } = parking;
    const friction = padFriction({ pad, temperature: cold });
    const radius = effectiveRadius({ rotor, pad, assumption });
    return { kind: 'caliper', leverRatio, cableEfficiency, clampRatio, friction, effectiveRadius: radius };
  }
  const { shoeLeverRatio, drumDiameter } = parking;
  const shoes = { kind: 'shoes', leverRatio, cableEfficiency, shoeLeverRatio } as const;
  const drumRadius = drumDiameter / 2;
  if (parking.kind === 'hat') return { ...shoes, brakeFactor: parking.brakeFactor, drumRadius };
  const brakeFactor = (padFriction({ pad, temperature: cold }) * parking.brakeFactor) / brakeFactorFriction;
  return { ...shoes, brakeFactor, drumRadius };
}
