import { clockGrain } from '../stops/clock-grain.ts';
import type { SensorReadings, StopSensors } from './stop-sensors.ts';

/** The moments that a smoother walks over, and which readings belong to each. */
export interface SmootherSteps {
  readonly count: number;
  /** s. */
  readonly time: Float64Array;
  /** m/s², NaN where the accelerometer read nothing. */
  readonly acceleration: Float64Array;
  /** m/s², mean of the accelerometer over 0.2 s about each step, its bias taken off; 0 without one. */
  readonly about: Float64Array;
  /** Index of the first speed of each step; the next step's is the end. One longer than the steps. */
  readonly firstSpeed: Int32Array;
  /** Index of the position, -1 where there is none. */
  readonly place: Int32Array;
  /** m/s, NaN where no wheel counts. */
  readonly wheel: Float64Array;
  /** Index of the step at which the distance begins. */
  readonly start: number;
}

/** s; a reading closer than this to a step is taken there. */
const near = 0.02 + clockGrain;
/** s before the brake from which wheels may slip and count no more. */
const wheelsUntil = 0.05;

/**
 * Lays the steps of a smoother: each reading of the accelerometer, the start of the distance, and the readings of other
 * sensors that lie apart from these, moved to when they were true.
 *
 * @param sensors - readings around a stop
 * @param latency - s, how late speed and position are
 * @returns the steps
 */
export function smootherSteps(sensors: StopSensors, latency: number): SmootherSteps {
  const { acceleration, speed, position, wheels } = sensors;
  const moved = (readings: SensorReadings): Float64Array => readings.time.map((moment) => moment - latency);
  const marks = Float64Array.of(sensors.start, sensors.to);
  let time = merged(acceleration === null ? moved(speed) : acceleration.time, marks, 1e-9);
  if (acceleration !== null) time = merged(time, moved(speed), near);
  if (position !== null) time = merged(time, moved(position), near);
  if (wheels !== null) time = merged(time, wheels.time, near);
  const count = time.length;
  const felt = new Float64Array(count).fill(NaN);
  acceleration?.time.forEach((moment, i) => (felt[nearest(time, moment)] = acceleration.values[i]!));
  const place = new Int32Array(count).fill(-1);
  position?.time.forEach((moment, i) => (place[nearest(time, moment - latency)] = i));
  const wheel = new Float64Array(count).fill(NaN);
  wheels?.time.forEach((moment, i) => {
    if (moment < sensors.application.from - wheelsUntil) wheel[nearest(time, moment)] = wheels.values[i]!;
  });
  return {
    count,
    time,
    acceleration: felt,
    about: meanAbout(time, felt, acceleration?.bias ?? 0),
    firstSpeed: speedsOf(time, speed, latency),
    place,
    wheel,
    start: nearest(time, sensors.start),
  };
}

/** s; over twice this time the shaking of a car averages out. */
const aside = 0.1 + clockGrain;

/** A moving mean; where a step has no reading near, that of the step before. */
function meanAbout(time: Float64Array, felt: Float64Array, bias: number): Float64Array {
  const about = new Float64Array(time.length);
  let [first, next, sum, count] = [0, 0, 0, 0];
  for (let k = 0; k < time.length; k += 1) {
    for (; next < time.length && time[next]! <= time[k]! + aside; next += 1) {
      if (Number.isNaN(felt[next])) continue;
      sum += felt[next]! - bias;
      count += 1;
    }
    for (; time[first]! < time[k]! - aside; first += 1) {
      if (Number.isNaN(felt[first])) continue;
      sum -= felt[first]! - bias;
      count -= 1;
    }
    about[k] = count > 0 ? sum / count : (about[k - 1] ?? 0);
  }
  return about;
}

/** Both in order; of the second only what is further than so many s from any of the first. */
function merged(first: Float64Array, second: Float64Array, apart: number): Float64Array {
  const own = second.filter((moment) => {
    const beside = first[nearest(first, moment)];
    return beside === undefined || Math.abs(beside - moment) > apart;
  });
  if (own.length === 0) return first;
  const all = new Float64Array(first.length + own.length);
  all.set(first);
  all.set(own, first.length);
  return all.sort();
}

/** Index of the time that is nearest to a moment. */
function nearest(time: Float64Array, moment: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  if (low === time.length) return Math.max(0, low - 1);
  return low > 0 && moment - time[low - 1]! <= time[low]! - moment ? low - 1 : low;
}

function speedsOf(time: Float64Array, speed: SensorReadings, latency: number): Int32Array {
  const first = new Int32Array(time.length + 1);
  let i = 0;
  for (let k = 0; k < time.length; k += 1) {
    first[k] = i;
    while (i < speed.time.length && nearest(time, speed.time[i]! - latency) <= k) i += 1;
  }
  first[time.length] = i;
  return first;
}
