import { meanFullyDevelopedDeceleration } from './closed-forms/mean-fully-developed-deceleration.ts';
import type { StopInput } from './stop-input.ts';
import type { StopLedger } from './stop-ledger.ts';
import type { StopLimit } from './stop-limit.ts';
import { StopMarch } from './stop-march.ts';

/** Temperatures of an axle's rotors in a stop. */
export interface StopHeat {
  /** °C, greatest at the rubbing face. */
  readonly peakInterface: number;
  /** °C of the ring at rest, its heat spread evenly. */
  readonly bulkAtRest: number;
}

export interface StopSummary {
  /** m from the first touch of the pedal to rest; Infinity where the car does not come to rest. */
  readonly distance: number;
  /** s. */
  readonly time: number;
  /** m/s², v_0² / (2 distance). */
  readonly meanDeceleration: number;
  /** m/s². */
  readonly peakDeceleration: number;
  /** m/s² between 0.8 and 0.1 of the speed at the first touch. */
  readonly meanFullyDevelopedDeceleration: number;
  readonly limitedBy: StopLimit;
  readonly cameToRest: boolean;
  /** True where the road's water was met outside its source's range: faster than 130 km/h, or on less than 1.6 mm of tread. */
  readonly isBeyondWaterSource: boolean;
  readonly front: StopHeat;
  readonly rear: StopHeat;
  /** J. */
  readonly energies: Readonly<StopLedger>;
}

/** Layers of each rotor's half thickness in the quick stop. */
export const quickLayers = 3;

/**
 * Answers a room to work in that quick stops can share, one after the other, so that they allocate nothing as they march.
 *
 * @returns the march, ready for `quickStop`
 * Source: [geometry]
 * @example
 * stopWorkspace().time // => 0
 */
export function stopWorkspace(): StopMarch {
  return new StopMarch(quickLayers);
}

/**
 * Answers how far a car goes from the first touch of the pedal to rest, what held it back, and where the energy went;
 * quasi-static, fast enough for searches.
 *
 * Equation: m a = Σ F_x + R, each axle's F_x the smaller of what its brakes and the engine ask (2 T / r, friction at the
 * interface temperature, pressure behind a lag; M_e / r) and what its tires give under the load that a itself moves, on the
 * water that there is (`WaterGrip`); see `BrakedCar`, `PressureRise` and `RotorState`.
 * Assumes: straight ahead; no slip dynamics (each tire limit is reached at once), pitch in step with deceleration; both
 * wheels of an axle alike; what of the driveline turns with the driven wheels stays with them to rest. Antilock: its stated
 * efficiency of the peak as soon as the brakes ask for more than the peak, off below its least speed, where wheels then
 * lock. An electronic rear limit holds the rear axle at its peak (with antilock at the antilock's efficiency). Without
 * antilock a driver gives the lesser of the foot's force and what brings the axle that would lock first to a share of its
 * limit (`DriverFoot`); the other axle follows the installed line. Or, with `lockedWheels`, wheels slide until rest.
 * Heat is that of the rings alone, with the share of `rotorHeatShare`: hat, hub and the pads' way to the fluid are for
 * schedules (`runSchedule`); a single stop is over before they count.
 * Valid: speed 0.1 to 150 m/s; water up to 2 mm (`isBeyondWaterSource` where it is met outside its source's range). Halving
 * every step changes the distance by less than 0.05 %, but for stops at the very edge of lock and a few very hot and fast
 * ones (without antilock fewer than four in a thousand), where a hair decides whether antilock or a slide begins. A
 * rounding of an input moves the distance by less than 1e-6, without antilock.
 *
 * @param input - set-up, road, foot; v_0, speed, m/s; rotor temperatures, °C; driver's share, 1
 * @param march - room to work in, from `stopWorkspace`; kept by the caller who makes many stops
 * @returns distance, m; time, s; decelerations, m/s²; limit; temperatures, °C; energies, J
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie], [limpert]
 * @example
 * quickStop({ setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 }).distance // => 47.06
 */
export function quickStop(input: StopInput, march: StopMarch = stopWorkspace()): StopSummary {
  march.start(input, true);
  march.run();
  return summarize(input, march);
}

/**
 * Answers the summary of a march that has come to its end.
 *
 * @param input - the stop
 * @param march - after its `run`
 * @returns distance, m; time, s; decelerations, m/s²; limit; temperatures, °C; energies, J
 * Source: [geometry]
 */
export function summarize(input: StopInput, march: StopMarch): StopSummary {
  const { cameToRest, books, car } = march;
  const distance = cameToRest ? march.distance : Infinity;
  const squared = input.speed * input.speed;
  return {
    distance,
    time: cameToRest ? march.time : Infinity,
    meanDeceleration: squared / (2 * distance),
    peakDeceleration: books.peakDeceleration,
    meanFullyDevelopedDeceleration: cameToRest ? betweenGates(input.speed, books) : 0,
    limitedBy: strongestLimit(books.limitedDistances),
    cameToRest,
    isBeyondWaterSource: car.front.water.isBeyondSource || car.rear.water.isBeyondSource,
    front: { peakInterface: books.frontPeakTemperature, bulkAtRest: car.front.heat.bulkTemperature() },
    rear: { peakInterface: books.rearPeakTemperature, bulkAtRest: car.rear.heat.bulkTemperature() },
    energies: { ...books.ledger },
  };
}

function betweenGates(speed: number, { distanceAtHigh, distanceAtLow }: StopMarch['books']): number {
  const gates = { highSpeed: 0.8 * speed, lowSpeed: 0.1 * speed, distanceAtHigh, distanceAtLow };
  return meanFullyDevelopedDeceleration(gates);
}

function strongestLimit(distances: Readonly<Record<StopLimit, number>>): StopLimit {
  let strongest: StopLimit = 'brake torque';
  if (distances['tire grip'] > distances[strongest]) strongest = 'tire grip';
  if (distances['front lock'] > distances[strongest]) strongest = 'front lock';
  if (distances['rear lock'] > distances[strongest]) strongest = 'rear lock';
  return strongest;
}
