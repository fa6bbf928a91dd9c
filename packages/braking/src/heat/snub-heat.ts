import { requireRange } from '@standstill/numerics';
import { kineticEnergy } from './kinetic-energy.ts';

export interface SnubScheduleInput {
  /** m, kg. */
  readonly mass: number;
  /** v_1, m/s. */
  readonly startSpeed: number;
  /** v_2, m/s. */
  readonly endSpeed: number;
  /** a, m/s², held through every snub. */
  readonly deceleration: number;
  /** s from the start of one snub to the start of the next. */
  readonly interval: number;
  /** How many snubs. */
  readonly count: number;
}

export interface SnubHeat {
  /** J, one snub. */
  readonly energyEach: number;
  /** s of braking, one snub. */
  readonly brakingTime: number;
  /** W, mean over the whole interval. */
  readonly meanPower: number;
  /** J, all snubs. */
  readonly energyTotal: number;
}

/**
 * Answers how much heat a schedule of equal snubs puts into the brakes.
 *
 * Equation: E = ½ m (v_1² − v_2²); t = (v_1 − v_2) / a; P = E / interval; total = n E.
 * Assumes: the brakes take all of the energy (no drag, rolling resistance or engine braking): an upper bound.
 * Valid: deceleration 0.1 to 15 m/s²; the interval not shorter than the braking.
 *
 * @param input - m, mass, kg; v_1 and v_2, speeds, m/s; a, deceleration, m/s²; interval, s; count
 * @returns energy of one snub, J; braking time, s; mean power, W; energy of all snubs, J
 * @throws OutOfRangeError where an input cannot be
 * Source: [fmvss-135]
 * @example
 * snubHeat({ mass: 1600, startSpeed: 30, endSpeed: 15, deceleration: 3, interval: 45, count: 15 }).energyTotal // => 8100000
 */
export function snubHeat(input: SnubScheduleInput): SnubHeat {
  const { startSpeed, endSpeed, interval, count } = input;
  const energyEach = kineticEnergy(input);
  const deceleration = requireRange('deceleration', input.deceleration, 'm/s²', 0.1, 15);
  const brakingTime = (startSpeed - endSpeed) / deceleration;
  requireRange('interval', interval, 's', brakingTime, 1e5);
  requireRange('number of snubs', count, '', 1, 10_000);
  return { energyEach, brakingTime, meanPower: energyEach / interval, energyTotal: count * energyEach };
}
