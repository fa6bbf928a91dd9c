import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import type { SpeedTrack } from '../stops/speed-run.ts';
import { presentSamples } from './present-samples.ts';
import type { RealSamples } from './real-samples.ts';
import { roughness } from './roughness.ts';

/** Wheels made to the receiver's measure. */
export interface ScaledWheels {
  readonly channel: Channel;
  /** m/s, with the scale in it. */
  readonly samples: RealSamples;
  /** True speed over reading. */
  readonly scale: number;
  /** m/s, one standard deviation. */
  readonly noise: number;
}

/** m/s; slower cars tell no scale. */
const fastEnough = 5;
/** m/s²; beyond it a wheel may slip. */
const steady = 0.6;
/** m/s; delays between the two make no less. Common practice. */
const leastNoise = 0.05;
const enough = 20;

/**
 * Scales wheel speeds to those of a receiver, while the car neither brakes nor accelerates: tires have their own size.
 *
 * @param table - the log
 * @param track - the receiver's speed
 * @param channel - a wheel, or what was made of several
 * @returns the wheels; null where the log has too little steady driving, or the scale is none (beyond 0.8 to 1.25)
 * Source: [common-practice]
 */
export function scaledWheels(table: ChannelTable, track: SpeedTrack, channel: Channel): ScaledWheels | null {
  const samples = presentSamples(table, channel);
  const ratios: number[] = [];
  let row = 0;
  for (const { time, speed } of track.runs)
    for (let i = 1; i + 1 < time.length; i += 1) {
      if (speed[i]! < fastEnough) continue;
      const change = (speed[i + 1]! - speed[i - 1]!) / (time[i + 1]! - time[i - 1]!);
      if (Math.abs(change) > steady) continue;
      while (row + 1 < samples.time.length && samples.time[row + 1]! <= time[i]!) row += 1;
      if (Math.abs(samples.time[row]! - time[i]!) > 0.1 || !(samples.values[row]! > fastEnough / 2)) continue;
      ratios.push(speed[i]! / samples.values[row]!);
    }
  if (ratios.length < enough) return null;
  ratios.sort((a, b) => a - b);
  const scale = ratios[ratios.length >> 1]!;
  if (!(scale > 0.8 && scale < 1.25)) return null;
  return {
    channel,
    samples: { time: samples.time, values: samples.values.map((value) => value * scale) },
    scale,
    noise: Math.max(leastNoise, scale * roughness(samples.values)),
  };
}
