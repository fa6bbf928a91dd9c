import { requireRange, type RandomStream } from '@standstill/numerics';
import { denseValue } from './dense-value.ts';
import type { DenseTrace } from './sensor-model.ts';

const gravity = 9.80665;

/** An accelerometer that is fixed to the body and looks forward; what is left out is perfect. */
export interface Accelerometer {
  /** Hz; no lower than the rate of the speed. */
  readonly rate: number;
  /** rad, how far it was mounted nose up, or the grade that it stands on. */
  readonly tilt?: number;
  /** m/s². */
  readonly bias?: number;
  /** m/s², standard deviation of errors that are new with every sample. */
  readonly noise?: number;
  /** rad of pitch for every m/s² of deceleration, once the body has settled. */
  readonly pitch?: number;
  /** Hz, how fast the body pitches on its springs. */
  readonly pitchRate?: number;
  /** Share of critical damping of that. */
  readonly pitchDamping?: number;
  /** m/s², step in which it is written. */
  readonly resolution?: number;
  /** s, how late it is written against the brake switch. */
  readonly latency?: number;
}

/**
 * What an accelerometer on a pitching body reads: the acceleration with a part of gravity, because the nose dives under
 * braking, swings, and rocks back at rest.
 *
 * Equation: θ'' + 2 ζ ω θ' + ω² θ = ω² c d; reading = a - g θ + g sin(tilt) + bias + noise; d = -a
 * Assumes: small angles.
 *
 * @param trace - the truth
 * @param sensor - the accelerometer
 * @param times - s, when it is read
 * @param random - where its noise comes from
 * @returns m/s², forward positive
 * @throws OutOfRangeError where the sensor can't be
 */
export function accelerometerReadings(
  { time, speed }: DenseTrace,
  sensor: Accelerometer,
  times: Float64Array,
  random: RandomStream,
): Float64Array {
  const noise = requireRange('noise of the accelerometer', sensor.noise ?? 0, 'm/s²', 0, 50);
  const tilt = requireRange('tilt of the accelerometer', sensor.tilt ?? 0, 'rad', -1, 1);
  const bias = requireRange('bias of the accelerometer', sensor.bias ?? 0, 'm/s²', -20, 20);
  const step = requireRange('resolution of the accelerometer', sensor.resolution ?? 0, 'm/s²', 0, 10);
  const latency = requireRange('latency of the accelerometer', sensor.latency ?? 0, 's', -2, 2);
  const felt = feltOn(time, speed, sensor);
  const offset = bias + gravity * Math.sin(tilt);
  return times.map((moment) => {
    const value = denseValue(time, felt, moment - latency) + offset + noise * random.normal();
    return step === 0 ? value : Math.round(value / step) * step;
  });
}

/** m/s², acceleration less what the pitch takes, at each sample of the trace. */
function feltOn(time: ArrayLike<number>, speed: ArrayLike<number>, sensor: Accelerometer): Float64Array {
  const perDeceleration = requireRange('pitch of the body', sensor.pitch ?? 0, 'rad s²/m', 0, 0.05);
  const omega = 2 * Math.PI * requireRange('rate of the pitch', sensor.pitchRate ?? 1.5, 'Hz', 0.1, 10);
  const damping = requireRange('damping of the pitch', sensor.pitchDamping ?? 0.4, '', 0.05, 2);
  const felt = new Float64Array(time.length);
  let [angle, turning] = [0, 0];
  for (let i = 1; i < felt.length; i += 1) {
    const step = time[i]! - time[i - 1]!;
    const acceleration = (speed[i]! - speed[i - 1]!) / step;
    turning +=
      step * (omega * omega * (-perDeceleration * acceleration - angle) - 2 * damping * omega * turning);
    angle += step * turning;
    felt[i] = acceleration - gravity * angle;
  }
  felt[0] = felt[1]!;
  return felt;
}
