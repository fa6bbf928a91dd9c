import { requireRange, type RandomStream } from '@standstill/numerics';
import { denseValue } from './dense-value.ts';
import type { DenseTrace } from './sensor-model.ts';

/** A receiver's position along a straight road; what is left out is perfect. */
export interface PositionSensor {
  /** m, standard deviation along and across the road of errors that are new with every sample. */
  readonly noise?: number;
  /** m, standard deviation of errors that wander. */
  readonly wander?: number;
  /** s, over which these fall to 1/e. */
  readonly wanderTime?: number;
  /** s, how late a position is written. */
  readonly latency?: number;
  /** rad from north, direction of the road. */
  readonly heading?: number;
}

/** rad. */
export interface Positions {
  readonly latitude: Float64Array;
  readonly longitude: Float64Array;
}

/** m, of a sphere. */
const earth = 6_371_000;
/** rad, where the made road lies. */
const origin = { latitude: 0.8, longitude: 0.2 };

/**
 * What a receiver makes of the way of a car along a straight road.
 *
 * @param trace - the truth
 * @param sensor - the receiver
 * @param times - s, when it is read
 * @param random - where its errors come from
 * @returns rad
 * @throws OutOfRangeError where the sensor can't be
 */
export function positionReadings(
  { time, speed }: DenseTrace,
  sensor: PositionSensor,
  times: Float64Array,
  random: RandomStream,
): Positions {
  const noise = requireRange('noise of the position', sensor.noise ?? 0, 'm', 0, 100);
  const wander = requireRange('wander of the position', sensor.wander ?? 0, 'm', 0, 100);
  const wanderTime = requireRange('time of the wander', sensor.wanderTime ?? 20, 's', 1e-3, 1e5);
  const latency = requireRange('latency of the position', sensor.latency ?? 0, 's', -2, 2);
  const [north, east] = [Math.cos(sensor.heading ?? 0), Math.sin(sensor.heading ?? 0)];
  const way = new Float64Array(time.length);
  for (let i = 1; i < way.length; i += 1)
    way[i] = way[i - 1]! + ((speed[i]! + speed[i - 1]!) / 2) * (time[i]! - time[i - 1]!);
  const drift = [random.normal(), random.normal()];
  const latitude = new Float64Array(times.length);
  const longitude = new Float64Array(times.length);
  times.forEach((moment, i) => {
    const kept = i === 0 ? 1 : Math.exp(-(moment - times[i - 1]!) / wanderTime);
    const [along = 0, across = 0] = drift.map((value, axis) => {
      const next = kept * value + Math.sqrt(1 - kept * kept) * random.normal();
      drift[axis] = next;
      return wander * next + noise * random.normal();
    });
    const covered = denseValue(time, way, moment - latency) + along;
    latitude[i] = origin.latitude + (covered * north - across * east) / earth;
    longitude[i] = origin.longitude + (covered * east + across * north) / (earth * Math.cos(origin.latitude));
  });
  return { latitude, longitude };
}
