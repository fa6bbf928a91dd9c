import { requireRange } from '@standstill/numerics';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { axleVolumes, type AxleVolumes } from './axle-volumes.ts';
import { strokeReserve } from './stroke-reserve.ts';
import { travelPerVolume } from './travel-per-volume.ts';

/** Pedal travel by what takes it; the parts sum to the travel. */
export interface TravelParts {
  /** m at the pedal pad. */
  readonly freePlay: number;
  /** m at the pedal pad. */
  readonly flex: number;
  /** m at the pedal pad. */
  readonly clearance: number;
  /** m at the pedal pad. */
  readonly caliper: number;
  /** m at the pedal pad. */
  readonly pads: number;
  /** m at the pedal pad. */
  readonly hoses: number;
  /** m at the pedal pad. */
  readonly tubes: number;
  /** m at the pedal pad. */
  readonly fluid: number;
  /** m at the pedal pad. */
  readonly air: number;
}

export interface PedalTravel {
  /** s, m at the pedal pad that the pressure asks for, also where the pedal does not have it. */
  readonly travel: number;
  /** Travel over what the pedal has, 1. */
  readonly share: number;
  readonly parts: TravelParts;
  /** m³ swallowed by the front axle. */
  readonly frontVolume: number;
  /** m³ swallowed by the rear axle. */
  readonly rearVolume: number;
  /** m left at the master cylinder; negative where it bottoms. */
  readonly strokeReserve: number;
  /** True where pedal or cylinder bottoms before the pressure of this force is reached: then the pressure is not there. */
  readonly bottomed: boolean;
  /** True where a hose is past its last stated pressure. */
  readonly hoseBeyondTable: boolean;
}

export interface PedalTravelInput {
  readonly setUp: SetUp;
  /** F_p, N at the pedal pad. */
  readonly pedalForce: number;
  /** n of the trapped air, 1 slow to 1.4 fast; 1 where not given. */
  readonly airExponent?: number | undefined;
}

/**
 * Answers how far the pedal goes down at a force, and what takes the travel.
 *
 * Equation: s = i_p Σ (V / A) + s_0 + c F_p, with V by `axleVolumes` at the pressures of `linePressures` and 1 / A by
 * `travelPerVolume`; nothing at zero force.
 * Assumes: slow push unless n says otherwise; no knock-back (see `knockedBack`); the booster's own lost motion is in the free play.
 * Valid: line pressure up to 60 MPa.
 *
 * @param input - set-up; F_p, pedal force, N; n, exponent of the trapped air, 1
 * @returns travel and its parts, m at the pedal pad; share of the travel there is, 1; volumes, m³; stroke left, m
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * pedalTravel({ setUp: exampleSetUp, pedalForce: 200 }).travel // => 0.0522878
 */
export function pedalTravel({ setUp, pedalForce, airExponent }: PedalTravelInput): PedalTravel {
  requirePedal(setUp);
  const pressures = linePressures({ setUp, pedalForce });
  const { fluid, frontBrake, rearBrake } = setUp;
  const front = axleVolumes({ brake: frontBrake, fluid, pressure: pressures.front, airExponent });
  const rear = axleVolumes({ brake: rearBrake, fluid, pressure: pressures.rear, airExponent });
  const parts = travelParts(setUp, pedalForce, front, rear);
  const travel = sumOf(parts);
  const reserve = strokeReserve({
    masterCylinder: setUp.masterCylinder,
    frontVolume: front.total,
    rearVolume: rear.total,
  });
  return {
    travel,
    share: travel / setUp.pedal.availableTravel,
    parts,
    frontVolume: front.total,
    rearVolume: rear.total,
    strokeReserve: reserve,
    bottomed: reserve < 0 || travel > setUp.pedal.availableTravel,
    hoseBeyondTable: front.hoseBeyondTable || rear.hoseBeyondTable,
  };
}

function travelParts(setUp: SetUp, pedalForce: number, front: AxleVolumes, rear: AxleVolumes): TravelParts {
  const rod = travelPerVolume(setUp.masterCylinder);
  const { ratio, freePlay, flex } = setUp.pedal;
  const taken = (frontVolume: number, rearVolume: number) =>
    ratio * (rod.front * frontVolume + rod.rear * rearVolume);
  return {
    freePlay: pedalForce > 0 ? freePlay : 0,
    flex: flex * pedalForce,
    clearance: taken(front.clearance, rear.clearance),
    caliper: taken(front.caliper, rear.caliper),
    pads: taken(front.pads, rear.pads),
    hoses: taken(front.hoses, rear.hoses),
    tubes: taken(front.tubes, rear.tubes),
    fluid: taken(front.fluid, rear.fluid),
    air: taken(front.air, rear.air),
  };
}

function sumOf(parts: TravelParts): number {
  const { freePlay, flex, clearance, caliper, pads, hoses, tubes, fluid, air } = parts;
  return freePlay + flex + clearance + caliper + pads + hoses + tubes + fluid + air;
}

function requirePedal({ pedal }: SetUp): void {
  requireRange('pedal free play', pedal.freePlay, 'm', 0, 0.1);
  requireRange('pedal flex', pedal.flex, 'm/N', 0, 1e-3);
  requireRange('pedal travel there is', pedal.availableTravel, 'm', 0.01, 0.5);
}
