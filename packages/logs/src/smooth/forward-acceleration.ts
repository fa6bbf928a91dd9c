import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import { clockGrain } from '../stops/clock-grain.ts';
import type { SpeedRun, SpeedTrack } from '../stops/speed-run.ts';
import { realSamples, type RealSamples } from './real-samples.ts';
import { roughness } from './roughness.ts';
import { speedAgreement } from './speed-agreement.ts';

const gravity = 9.80665;

/** An accelerometer that follows the speed, ready to be used. */
export interface ForwardAcceleration {
  readonly channel: Channel;
  /** m/s², forward positive: the sign is already put right. */
  readonly samples: RealSamples;
  readonly isTurned: boolean;
  /** s, usual time between samples. */
  readonly interval: number;
  /** m/s², one standard deviation of its errors. */
  readonly noise: number;
  readonly noiseOrigin: 'estimated' | 'given';
  /** m/s², what it reads too much, and one standard deviation of that from stop to stop. */
  readonly bias: number;
  readonly biasSpread: number;
  /** The bias was seen with the car at rest; else it is what the speed leaves over. */
  readonly isFromRest: boolean;
}

/** Why an accelerometer is of no use. */
export interface UselessAcceleration {
  readonly channel: Channel;
  readonly reason: string;
}

/** Hz; slower samples miss how the deceleration builds up and add nothing. Common practice. */
const slowest = 9.5;
/** Share of the variance of the speed's changes that must be in the accelerometer, as a correlation. Common practice. */
const leastCorrelation = 0.7;
/** Reading over true acceleration; beyond these the unit or the axis is another one. Common practice. */
const leastSlope = 0.75;
const greatestSlope = 1.35;
/** m/s²; no car accelerometer is better, and what shakes a car is more. Common practice. */
const leastNoise = 0.05;
/** m/s²; by so much a road's fall differs from that of the place of rest: 1.5 %. Common practice. */
const gradeSpread = 0.015 * gravity;

/**
 * Judges an accelerometer by the speed: whether it looks forward at all, which sign it has, how it is tilted and how
 * much it scatters.
 *
 * Assumes: a bias at standstill is a tilt of the mounting or the fall of the road; it may differ from stop to stop by
 * a fall of 1.5 %, and more where standstills say so.
 *
 * @param table - the log
 * @param track - its speed
 * @param channel - an accelerometer of the log
 * @param given - m/s², standard deviation of its errors where a person said so; else null
 * @returns the accelerometer ready for use, or why it is of none
 * Source: [common-practice]
 */
export function forwardAcceleration(
  table: ChannelTable,
  track: SpeedTrack,
  channel: Channel,
  given: number | null,
): ForwardAcceleration | UselessAcceleration {
  const samples = realSamples(table, channel);
  const useless = (reason: string): UselessAcceleration => ({ channel, reason });
  const interval = usualStep(samples.time);
  if (!(interval <= 1 / slowest))
    return useless(
      `It has ${Number.isFinite(interval) ? (1 / interval).toFixed(1) : 'no'} samples a second; under 10 it adds nothing to the speed.`,
    );
  const agreement = speedAgreement(track, samples);
  if (agreement === null)
    return useless('The log has too little braking in it to hold it against the speed.');
  const { correlation, slope } = agreement;
  if (Math.abs(correlation) < leastCorrelation)
    return useless(
      `It does not follow the changes of the speed (correlation ${correlation.toFixed(2)}): another axis or a loose mount.`,
    );
  if (Math.abs(slope) < leastSlope || Math.abs(slope) > greatestSlope)
    return useless(
      `It reads ${Math.abs(slope).toFixed(2)} times what the speed says: another unit, or tilted by far.`,
    );
  const isTurned = correlation < 0;
  const values = isTurned ? samples.values.map((value) => -value) : samples.values;
  const resting = track.runs.flatMap((run) => restingMeans(run, { time: samples.time, values }));
  const mean = resting.reduce((sum, value) => sum + value, 0) / resting.length;
  const spread =
    resting.length < 2
      ? 0
      : Math.sqrt(resting.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (resting.length - 1));
  const isFromRest = resting.length > 0;
  return {
    channel,
    samples: { time: samples.time, values },
    isTurned,
    interval,
    noise: given ?? Math.max(leastNoise, roughness(values)),
    noiseOrigin: given === null ? 'estimated' : 'given',
    bias: isFromRest ? mean : (isTurned ? -1 : 1) * agreement.intercept,
    biasSpread: Math.hypot(gradeSpread, isFromRest ? spread : 2 * gradeSpread),
    isFromRest,
  };
}

/** s; shorter halts are not over before the body has stopped rocking. */
const rocking = 1;
/** m/s; no sensor tells this from rest. */
const stillness = 0.1;

/** m/s², mean of each halt that lasts, from a second after the car came to rest. */
function restingMeans(run: SpeedRun, { time, values }: RealSamples): number[] {
  const means: number[] = [];
  let row = 0;
  for (let i = 0; i < run.time.length; i += 1) {
    if (run.speed[i]! > stillness) continue;
    const from = run.time[i]! + rocking - clockGrain;
    while (i + 1 < run.time.length && run.speed[i + 1]! <= stillness) i += 1;
    const to = run.time[i]!;
    while (row < time.length && time[row]! < from) row += 1;
    let [sum, count] = [0, 0];
    for (; row < time.length && time[row]! < to - 0.2 - clockGrain; row += 1) {
      sum += values[row]!;
      count += 1;
    }
    if (count >= 10) means.push(sum / count);
  }
  return means;
}

function usualStep(time: Float64Array): number {
  if (time.length < 20) return Infinity;
  const stride = Math.max(1, Math.floor(time.length / 5000));
  const steps = Float64Array.from(
    { length: Math.floor((time.length - 1) / stride) },
    (_, i) => time[i * stride + 1]! - time[i * stride]!,
  ).sort();
  return steps[steps.length >> 1]!;
}
