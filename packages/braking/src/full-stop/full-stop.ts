import { meanFullyDevelopedDeceleration } from '../stop/closed-forms/mean-fully-developed-deceleration.ts';
import type { StopHeat } from '../stop/quick-stop.ts';
import type { StopLimit } from '../stop/stop-limit.ts';
import type { FullLedger } from './full-ledger.ts';
import { FullMarch } from './full-march.ts';
import type { FullStopInput } from './full-stop-input.ts';

export interface FullStopSummary {
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
  /**
   * Mean deceleration over that of the ideal stop, 1: every wheel at the peak friction of its static load at once; 0 where
   * the tires alone would never stop the car.
   */
  readonly efficiency: number;
  readonly limitedBy: StopLimit;
  readonly cameToRest: boolean;
  /** True where the road's water was met outside its source's range: faster than 130 km/h, or on less than 1.6 mm of tread. */
  readonly isBeyondWaterSource: boolean;
  /** How often a control let pressure off in front, 1. */
  readonly frontCycles: number;
  /** How often it did in the rear, 1. */
  readonly rearCycles: number;
  /** Part of the distance, 1, on which a wheel of the axle stood still. */
  readonly frontSlideShare: number;
  readonly rearSlideShare: number;
  /** The warmer rotor of each axle. */
  readonly front: StopHeat;
  readonly rear: StopHeat;
  /** J. */
  readonly energies: FullLedger;
}

/** Steps of speed by which the ideal stop on water is summed. */
const waterSpeedSteps = 64;

/**
 * Answers a room to work in that full stops can share, one after the other, so that they allocate nothing as they march.
 *
 * @returns the march, ready for `fullStop`
 * Source: [geometry]
 * @example
 * fullStopWorkspace().cameToRest // => false
 */
export function fullStopWorkspace(): FullMarch {
  return new FullMarch();
}

/**
 * Answers how a car stops with all its wheels turning: slip, pressure and heat of each, pitch, and a control that cycles.
 *
 * Equation: see `StopDynamics`, `AntilockController`, `WheelHeat`.
 * Assumes: straight ahead. An antilock is the generic one of `AntilockControl`: the set-up's stated efficiency is not used,
 * it comes out. Without antilock a driver holds the wheel that would lock first at a share of its limit, or, with
 * `lockedWheels`, the foot stays down and wheels slide.
 * Valid: speed 0.1 to 150 m/s. Halving every step changes the distance by less than 0.005 % without antilock; with it a
 * stop is chaotic, see `meanFullStop`.
 *
 * @param input - set-up, road, foot; v_0, speed, m/s; rotor temperatures, °C
 * @param march - room to work in, from `fullStopWorkspace`; kept by the caller who makes many stops
 * @returns distance, m; time, s; decelerations, m/s²; efficiency, 1; limit; temperatures, °C; energies, J
 * @throws OutOfRangeError where an input cannot be
 * Source: [pacejka], [gillespie], [limpert]
 * @example
 * fullStop({ setUp: exampleSetUp, road: exampleRoad, foot: { kind: 'ramp', force: 90, rampTime: 0.2 }, speed: 27.8 }).distance // => 77.3104
 */
export function fullStop(input: FullStopInput, march: FullMarch = fullStopWorkspace()): FullStopSummary {
  march.start(input);
  march.run();
  return summarizeFullStop(input, march);
}

/**
 * Answers the summary of a march that has come to its end.
 *
 * @param input - the stop
 * @param march - after its `run`
 * @returns distance, m; time, s; decelerations, m/s²; efficiency, 1; limit; temperatures, °C; energies, J
 * Source: [geometry]
 */
export function summarizeFullStop(input: FullStopInput, march: FullMarch): FullStopSummary {
  const { cameToRest, notes, controller, heat, books } = march;
  const { car, wheels } = march.dynamics;
  const driven = car.distance;
  const distance = cameToRest ? driven : Infinity;
  const meanDeceleration = (input.speed * input.speed) / (2 * distance);
  return {
    distance,
    time: cameToRest ? march.time : Infinity,
    meanDeceleration,
    peakDeceleration: notes.peakDeceleration,
    meanFullyDevelopedDeceleration: cameToRest ? betweenGates(input.speed, march) : 0,
    efficiency: efficiencyOf(meanDeceleration, idealDeceleration(march, input.speed)),
    limitedBy: notes.limitedBy(),
    cameToRest,
    isBeyondWaterSource: wheels.frontWater.isBeyondSource || wheels.rearWater.isBeyondSource,
    frontCycles: controller.frontCycles,
    rearCycles: controller.rearCycles,
    frontSlideShare: driven > 0 ? notes.frontSlide / driven : 0,
    rearSlideShare: driven > 0 ? notes.rearSlide / driven : 0,
    front: warmer(heat, 0),
    rear: warmer(heat, 2),
    energies: books.ledger(),
  };
}

/** 1; 0 where the tires alone would never stop the car, so that there is nothing to compare with. */
function efficiencyOf(meanDeceleration: number, ideal: number): number {
  return ideal > 0 ? meanDeceleration / ideal : 0;
}

/** m/s² of a stop from a speed, m/s, with every wheel at the peak friction of its static load: v_0² / (2 ∫ v dv / a). */
function idealDeceleration({ dynamics }: FullMarch, speed: number): number {
  if (!dynamics.wheels.areWet) return idealAt(dynamics, speed);
  let way = 0;
  const width = speed / waterSpeedSteps;
  for (let i = 0; i < waterSpeedSteps; i += 1) {
    const middle = (i + 0.5) * width;
    way += (width * middle) / idealAt(dynamics, middle);
  }
  return (speed * speed) / (2 * way);
}

/** m/s² at a speed, m/s. */
function idealAt({ body, wheels }: FullMarch['dynamics'], speed: number): number {
  let sum = 0;
  for (let at = 0; at < 4; at += 1) {
    const axle = at < 2 ? body.frontStill : body.rearStill;
    sum += wheels.peakOf(at, axle * wheels.each[at]!.loadShare, speed);
  }
  return sum / body.mass;
}

function betweenGates(speed: number, { notes }: FullMarch): number {
  const { distanceAtHigh, distanceAtLow } = notes;
  return meanFullyDevelopedDeceleration({
    highSpeed: 0.8 * speed,
    lowSpeed: 0.1 * speed,
    distanceAtHigh,
    distanceAtLow,
  });
}

function warmer({ rotors, hottest }: FullMarch['heat'], first: 0 | 2): StopHeat {
  const second = first + 1;
  return {
    peakInterface: Math.max(hottest[first]!, hottest[second]!),
    bulkAtRest: Math.max(rotors[first].bulkTemperature(), rotors[second]!.bulkTemperature()),
  };
}
