import { linePositions } from '../smooth/line-positions.ts';
import type { RealSamples } from '../smooth/real-samples.ts';
import type { SensorReadings, StopSensors } from '../smooth/stop-sensors.ts';
import { clockGrain } from './clock-grain.ts';
import type { RestMoment } from './rest-moment.ts';
import type { StopContext } from './stop-context.ts';

export interface Around {
  /** s on the logger's clock, where the distance begins. */
  readonly start: number;
  /** s, where the deceleration begins, and how long it builds up. */
  readonly onset: number;
  readonly build: number;
  readonly rest: RestMoment;
  /** s, how late the speed is, with its standard error. */
  readonly latency: { readonly value: number; readonly standardError: number };
  readonly withAcceleration: boolean;
}

/** s before the start and after rest that are smoothed with the stop, and how many samples of the speed at least. */
const leadIn = { seconds: 2, samples: 4 };
const leadOut = { seconds: 0.3, samples: 1 };
/** s before the start that are shown. */
const shown = 1;
/** m/s, one standard deviation of the slow error of a receiver's speed. Common practice. */
const wander = 0.04;

/**
 * What the sensors of a log read around one stop.
 *
 * @param context - the log and its sensors
 * @param around - the stop
 * @returns the readings, s and SI
 */
export function sensorsAround(context: StopContext, around: Around): StopSensors {
  const { table, run, sensors } = context;
  const { start, onset, build, rest, latency, withAcceleration } = around;
  const restTime = rest.time - latency.value;
  const unsure = Math.max(
    0.15,
    3 * Math.hypot(rest.standardError, withAcceleration ? latency.standardError : 0),
  );
  const { interval } = context.track;
  const from = Math.min(start, onset) - Math.max(leadIn.seconds, leadIn.samples * interval);
  const to = restTime + unsure + Math.max(leadOut.seconds, leadOut.samples * interval);
  const within = ({ time, values }: RealSamples, late: number): RealSamples => {
    const [first, end] = [firstFrom(time, from + late - clockGrain), firstFrom(time, to + late + clockGrain)];
    return { time: time.subarray(first, end), values: values.subarray(first, end) };
  };
  const { acceleration, position, wheels } = sensors;
  const line =
    withAcceleration && position !== null
      ? linePositions(table, position.latitude, position.longitude, {
          from: from + latency.value,
          to: to + latency.value,
        })
      : null;
  return {
    from,
    to,
    shownFrom: start - shown - clockGrain,
    start,
    application: { from: Math.min(start, onset) - 0.1 - clockGrain, to: onset + build + 0.3 },
    rest: { from: restTime - unsure - clockGrain, to: restTime + unsure + clockGrain },
    latency,
    speed: {
      ...within({ time: run.time, values: run.speed }, latency.value),
      noise: sensors.speedNoise,
      wander,
    },
    acceleration:
      withAcceleration && acceleration !== null
        ? {
            ...readings(within(acceleration.samples, 0), acceleration.noise),
            bias: acceleration.bias,
            biasSpread: acceleration.biasSpread,
          }
        : null,
    position: line === null ? null : readings(line, position!.noise),
    wheels: withAcceleration && wheels !== null ? readings(within(wheels.samples, 0), wheels.noise) : null,
  };
}

function firstFrom(time: Float64Array, moment: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  return low;
}

function readings(samples: RealSamples, noise: number): SensorReadings {
  return { ...samples, noise };
}
