import { quantile } from '@standstill/numerics';
import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import { freshSamples } from './fresh-samples.ts';
import { heldPeriod } from './held-period.ts';
import { medianWheelSpeed } from './median-wheel-speed.ts';
import { speedResolution } from './speed-resolution.ts';
import type { SpeedRun, SpeedTrack } from './speed-run.ts';

/** m/s; no car on a road is faster, so such a value is damage and taken as a gap. */
const fastest = 150;

/**
 * The speed of a log as runs of real samples. Voids and gaps cut it: nothing is bridged that is longer than three usual
 * steps and longer than half a second.
 *
 * @param table - the log
 * @param wanted - name of the channel to use; null takes the one with the most real samples a second
 * @returns the track; null where no channel holds a speed
 */
export function speedTrack(table: ChannelTable, wanted: string | null): SpeedTrack | null {
  const named = table.channels.filter(
    ({ name, quantity }) => quantity !== 'unknown' && (wanted === null || name === wanted),
  );
  const speeds = named.filter(
    ({ quantity }) => quantity === 'speed' || (wanted !== null && quantity === 'wheel-speed'),
  );
  const candidates = speeds.length > 0 || wanted !== null ? speeds : medianWheelSpeed(table);
  const tracks = candidates.map((channel) => trackOf(table, channel)).filter((track) => track !== null);
  return tracks.reduce<SpeedTrack | null>(
    (best, track) => (best === null || track.interval < best.interval * 0.7 ? track : best),
    null,
  );
}

function trackOf(table: ChannelTable, channel: Channel): SpeedTrack | null {
  const { time, speed, segment } = validSamples(table, channel);
  if (time.length < 2) return null;
  const rowInterval = usualStep([{ time, speed }]);
  const rows = cut(time, speed, segment, Math.max(0.5, 3 * rowInterval));
  const resolution = speedResolution(speed);
  const period = heldPeriod(time, speed, resolution);
  const runs = (period === null ? rows : rows.map((run) => freshSamples(run, period))).filter(
    (run) => run.time.length > 1,
  );
  if (runs.length === 0)
    return { channel, runs, interval: period ?? rowInterval, resolution, wasHeld: period !== null };
  return { channel, runs, interval: period ?? usualStep(runs), resolution, wasHeld: period !== null };
}

function validSamples(
  { time, segmentStarts }: ChannelTable,
  { values }: Channel,
): { time: Float64Array; speed: Float64Array; segment: Uint32Array } {
  const times = new Float64Array(values.length);
  const speeds = new Float64Array(values.length);
  const segments = new Uint32Array(values.length);
  let count = 0;
  let current = 0;
  for (let row = 0; row < values.length; row += 1) {
    while ((segmentStarts[current + 1] ?? Infinity) <= row) current += 1;
    const value = values[row]!;
    if (!(Math.abs(value) < fastest)) continue;
    times[count] = time[row]!;
    speeds[count] = Math.max(0, value);
    segments[count] = current;
    count += 1;
  }
  return {
    time: times.subarray(0, count),
    speed: speeds.subarray(0, count),
    segment: segments.subarray(0, count),
  };
}

function cut(time: Float64Array, speed: Float64Array, segment: Uint32Array, limit: number): SpeedRun[] {
  const runs: SpeedRun[] = [];
  let start = 0;
  for (let i = 1; i <= time.length; i += 1) {
    if (i < time.length && segment[i] === segment[i - 1] && time[i]! - time[i - 1]! <= limit) continue;
    runs.push({ time: time.subarray(start, i), speed: speed.subarray(start, i) });
    start = i;
  }
  return runs;
}

function usualStep(runs: readonly SpeedRun[]): number {
  const count = runs.reduce((sum, { time }) => sum + time.length, 0);
  const stride = Math.max(1, Math.floor(count / 10_000));
  const steps: number[] = [];
  for (const { time } of runs)
    for (let i = 1; i < time.length; i += stride) steps.push(time[i]! - time[i - 1]!);
  return quantile(steps, 0.5);
}
