import { OutOfRangeError, requireRange, type RandomStream } from '@standstill/numerics';
import { accelerometerReadings, type Accelerometer } from './accelerometer.ts';
import { denseValue } from './dense-value.ts';
import { positionReadings, type Positions, type PositionSensor } from './position-sensor.ts';
import { wheelReadings, type WheelSensor } from './wheel-sensor.ts';

/** What really happened, in steps much finer than any logger's. */
export interface DenseTrace {
  /** s, ascending. */
  readonly time: ArrayLike<number>;
  /** m/s. */
  readonly speed: ArrayLike<number>;
  /** 1 while the brake is applied, else 0; left out where no switch is recorded. */
  readonly brakeApplied?: ArrayLike<number>;
}

/** What a logger makes of it; what is left out is perfect. */
export interface Sensor {
  /** Hz, samples of the speed a second. */
  readonly rate: number;
  /** s, how late a speed is written against the brake switch. */
  readonly latency?: number;
  /** s, time constant of the receiver's own low-pass filter. */
  readonly filterTime?: number;
  /** m/s, standard deviation of errors that are new with every sample. */
  readonly noise?: number;
  /** m/s, standard deviation of errors that hang together from sample to sample, as filtered ones do. */
  readonly correlatedNoise?: number;
  /** s, over which these fall to 1/e. */
  readonly correlationTime?: number;
  /** m/s, step in which the speed is written. */
  readonly resolution?: number;
  /** Chance that a dropout begins at a sample. */
  readonly dropoutChance?: number;
  /** Samples that a dropout lasts. */
  readonly dropoutLength?: number;
  /** Sets the pace of the rows, with gaps where the speed has no sample. */
  readonly accelerometer?: Accelerometer;
  /** Read in every row. */
  readonly wheels?: readonly WheelSensor[];
  /** Read where the speed is. */
  readonly position?: PositionSensor;
}

/** What the logger wrote. */
export interface RecordedTrace {
  /** s. */
  readonly time: Float64Array;
  /** m/s; NaN in a dropout and in rows between its samples. */
  readonly speed: Float64Array;
  /** 0 or 1; null where no switch was given. */
  readonly brakeApplied: Float64Array | null;
  /** m/s², forward positive. */
  readonly acceleration?: Float64Array;
  /** m/s, wheel by wheel. */
  readonly wheelSpeeds?: readonly Float64Array[];
  /** rad; NaN in rows between its samples. */
  readonly position?: Positions;
}

/**
 * Makes of a true trace what a logger would record: filtered, late, with errors of its own, in steps, with dropouts.
 * Samples fall anywhere against the trace's time, as no logger waits for the brake.
 * Where an accelerometer sets the pace of the rows, the speed is written in its own rows only.
 *
 * Equation: first-order filter dy/dt = (v - y)/τ; errors e_i = ρ e_(i-1) + σ √(1-ρ²) z_i, ρ = exp(-1/(rate T)), plus
 * white ones; written value = step × round(value/step), never below zero
 * Assumes: the trace is at least ten times finer than the samples.
 *
 * @param trace - the truth
 * @param sensor - the logger
 * @param random - where its errors come from
 * @returns what is in the log
 * @throws OutOfRangeError where the trace or the sensor can't be
 */
export function sensorModel(trace: DenseTrace, sensor: Sensor, random: RandomStream): RecordedTrace {
  checkTrace(trace);
  const { time } = trace;
  const rate = requireRange('sample rate', sensor.rate, 'Hz', 0.01, 10_000);
  const filtered = lowPass(trace, requireRange('filter time', sensor.filterTime ?? 0, 's', 0, 10));
  const { accelerometer, wheels, position } = sensor;
  const pace = Math.max(
    rate,
    requireRange('rate of the rows', accelerometer?.rate ?? rate, 'Hz', rate, 10_000),
  );
  const begin = time[0]! + random.uniform() / pace;
  const count = Math.max(0, Math.floor((time[time.length - 1]! - begin) * pace) + 1);
  const times = Float64Array.from({ length: count }, (_, i) => begin + i / pace);
  const latency = requireRange('latency', sensor.latency ?? 0, 's', -2, 2);
  const error = errorSource(sensor, rate, random);
  const lost = dropouts(sensor, random);
  const isSampled = sampling(rate / pace, pace === rate ? 0 : random.uniform());
  const sampled = times.map((_, row) => (isSampled(row) ? 1 : 0));
  const speed = times.map((moment, row) => {
    if (sampled[row] === 0) return NaN;
    const value = written(denseValue(time, filtered, moment - latency) + error(), sensor.resolution ?? 0);
    return lost() ? NaN : value;
  });
  const { brakeApplied } = trace;
  const applied =
    brakeApplied === undefined
      ? null
      : times.map((moment) => (denseValue(time, brakeApplied, moment) > 0.5 ? 1 : 0));
  return {
    time: times,
    speed,
    brakeApplied: applied,
    ...(accelerometer && { acceleration: accelerometerReadings(trace, accelerometer, times, random) }),
    ...(wheels && { wheelSpeeds: wheels.map((wheel) => wheelReadings(trace, wheel, times, random)) }),
    ...(position && { position: placed(positionReadings(trace, position, times, random), sampled) }),
  };
}

/** Which rows hold a sample of something that comes so many times a row. */
function sampling(share: number, phase: number): (row: number) => boolean {
  return (row) => Math.floor((row + 1) * share + phase + 1e-9) > Math.floor(row * share + phase + 1e-9);
}

function placed({ latitude, longitude }: Positions, sampled: Float64Array): Positions {
  const where = (values: Float64Array): Float64Array =>
    values.map((value, row) => (sampled[row] === 0 ? NaN : value));
  return { latitude: where(latitude), longitude: where(longitude) };
}

function checkTrace({ time, speed }: DenseTrace): void {
  if (time.length < 2) throw new OutOfRangeError('samples of the trace', time.length, '', 2, Infinity);
  if (speed.length !== time.length)
    throw new OutOfRangeError('speeds of the trace', speed.length, '', time.length, time.length);
  for (let i = 1; i < time.length; i += 1)
    requireRange('step of time', time[i]! - time[i - 1]!, 's', 1e-9, 1e3);
}

/** Exact for a speed that stays from sample to sample. */
function lowPass({ time, speed }: DenseTrace, filterTime: number): Float64Array {
  const filtered = Float64Array.from(speed);
  if (filterTime === 0) return filtered;
  for (let i = 1; i < filtered.length; i += 1) {
    const kept = Math.exp(-(time[i]! - time[i - 1]!) / filterTime);
    filtered[i] = speed[i]! + (filtered[i - 1]! - speed[i]!) * kept;
  }
  return filtered;
}

function errorSource(sensor: Sensor, rate: number, random: RandomStream): () => number {
  const white = requireRange('noise', sensor.noise ?? 0, 'm/s', 0, 10);
  const together = requireRange('correlated noise', sensor.correlatedNoise ?? 0, 'm/s', 0, 10);
  const kept = Math.exp(
    -1 / (rate * requireRange('correlation time', sensor.correlationTime ?? 0.5, 's', 1e-6, 1e3)),
  );
  const fresh = Math.sqrt(1 - kept * kept);
  let state = together * random.normal();
  return () => {
    state = kept * state + together * fresh * random.normal();
    return state + white * random.normal();
  };
}

function dropouts(sensor: Sensor, random: RandomStream): () => boolean {
  const chance = requireRange('chance of a dropout', sensor.dropoutChance ?? 0, '', 0, 1);
  const length = requireRange('length of a dropout', sensor.dropoutLength ?? 1, '', 1, 1e6);
  let left = 0;
  return () => {
    if (left > 0) left -= 1;
    else if (random.uniform() < chance) left = length - 1;
    else return false;
    return true;
  };
}

function written(value: number, resolution: number): number {
  const step = requireRange('resolution', resolution, 'm/s', 0, 10);
  return Math.max(0, step === 0 ? value : Math.round(value / step) * step);
}
