import { usualDriverShare } from '@standstill/braking';
import { knownsOf } from '../../draws/knowns-of.ts';
import { besideTheDistance } from '../../draws/questions/beside-the-distance.ts';
import type { Job } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';

/** Path of the share of the lock limit at which a driver without ABS holds the brakes: a name of the model's own. */
export const driverSharePath = 'driver.lockShare';

/** One standard deviation of what a person drove on the day, where the job states none (assumed). */
const ofTheDay = {
  /** Share of the value. */
  pedalForce: 0.1,
  pedalRamp: 0.3,
  /** °C. */
  startTemperature: 15,
  /** Rise over run. */
  grade: 0.002,
  /** Of one. */
  driverShare: 0.04,
} as const;

const driverShare: Known = {
  value: usualDriverShare,
  origin: 'assumed',
  spread: ofTheDay.driverShare,
  path: driverSharePath,
  low: 0.5,
  high: 1,
  fact: {
    title: 'Share of the lock limit that the driver holds',
    kind: 'share',
    low: 0.5,
    high: 1,
    example: '90 %',
    spread: 'share',
  },
};

/** °C, the rotors' temperature before the stops as recorded, with one standard deviation. */
export interface StartTemperature {
  readonly value: number;
  readonly spread: number;
}

/** What the logs say of the day. */
export interface DayRecord {
  /** Of the rotors; null where it was not recorded. */
  readonly startTemperature?: StartTemperature | null;
  /** True where the stops are corrected to level ground. */
  readonly isLevel?: boolean;
}

/**
 * Every number that is not known exactly of the set-ups and of the day they were driven on. What a person only chose
 * for the question (the foot, the road's slope, the temperature at the start) was something near it on the day.
 *
 * @param job - the job
 * @param setUpIds - ids of the set-ups
 * @param record - what the logs say: rotors at the start, °C; whether the stops are corrected to level ground
 * @returns the numbers, each once, SI (°C for temperatures)
 */
export function dayKnowns(
  job: Job,
  setUpIds: readonly string[],
  { startTemperature = null, isLevel = false }: DayRecord = {},
): readonly Known[] {
  const { pedalForce, pedalRamp, startTemperature: start, grade } = job.conditions.facts;
  const driven = [
    loosened(pedalForce, ofTheDay.pedalForce * pedalForce.value),
    loosened(pedalRamp, ofTheDay.pedalRamp * pedalRamp.value),
    startTemperature === null
      ? loosened(start, ofTheDay.startTemperature)
      : { ...start, ...startTemperature, origin: 'measured' as const },
    loosened(isLevel ? { ...grade, value: 0 } : grade, ofTheDay.grade),
  ];
  const beside = besideTheDistance(job);
  const ofDay = new Set(driven.map(({ path }) => path));
  const others = knownsOf(job, setUpIds).filter(({ path }) => !beside.has(path) && !ofDay.has(path));
  const holdsByFoot = job.setUps.some(({ id, slots }) => setUpIds.includes(id) && slots.antilock === null);
  return [...others, ...driven.filter(({ spread }) => spread > 0), ...(holdsByFoot ? [driverShare] : [])];
}

/** A choice of the question becomes something that was near it. */
function loosened(known: Known, spread: number): Known {
  return known.spread > 0 ? known : { ...known, spread, origin: 'assumed' };
}
