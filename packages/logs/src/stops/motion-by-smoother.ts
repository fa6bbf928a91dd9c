import type { AccelerationOnset } from '../smooth/acceleration-onset.ts';
import type { SmoothedStop } from '../smooth/backward-pass.ts';
import type { BrakeStart } from './brake-start.ts';
import { traceOf } from './drawn-trace.ts';
import { fullyDevelopedDeceleration } from './fully-developed-deceleration.ts';
import type { RestMoment } from './rest-moment.ts';
import { sensorsAround } from './sensors-around.ts';
import type { SpeedRun } from './speed-run.ts';
import { speedAt } from './speed-at.ts';
import type { StopContext } from './stop-context.ts';
import type { StopMotion } from './stop-motion.ts';

/**
 * s, one standard error of the unknown delay of an accelerometer against the brake signal: its filter and the logger's
 * bus are as unknown as those of the speed. Assumed; it moves all stops of a logger alike and drops out of differences.
 */
const accelerationDelay = 0.05;
/** s, usual build-up, within which the deceleration may change fastest. Common practice. */
const usualBuild = 0.5;

/**
 * The motion of a stop by the smoother over speed, accelerometer and what else there is. The delay of the speed
 * against the accelerometer is found from the two; that of the accelerometer against the brake signal can't be, and
 * enters the interval.
 *
 * Assumes: the accelerometer is late against the brake signal by 0 ± 0.05 s.
 *
 * @param context - the log and its sensors
 * @param parts - the onset by the accelerometer, the brake signal and rest
 * @returns the motion, m and s; null where the car is not followed to rest
 * Source: [common-practice]
 */
export function motionBySmoother(
  context: StopContext,
  {
    onset,
    brake,
    rest,
  }: { readonly onset: AccelerationOnset; readonly brake: BrakeStart | null; readonly rest: RestMoment },
): StopMotion | null {
  const start = brake?.time ?? onset.time;
  const { speedLatency } = context.options;
  const smoothed = context.sensors.smooth(
    sensorsAround(context, {
      start,
      onset: onset.time,
      build: usualBuild,
      rest,
      latency: {
        value: speedLatency.value,
        standardError: Math.hypot(speedLatency.standardError, accelerationDelay),
      },
      withAcceleration: true,
    }),
  );
  const end = restOf(smoothed);
  if (end === null) return null;
  const chain = chainOf(smoothed, end);
  const entrySpeed = chain.speed[0]!;
  const startError =
    brake === null ? onset.standardError : Math.hypot(brake.standardError, accelerationDelay);
  return {
    startBy: brake?.by ?? 'deceleration-onset',
    start,
    end,
    entrySpeed,
    distance: smoothed.distance,
    distanceError: Math.hypot(smoothed.distanceError, entrySpeed * startError),
    startDelayError: brake === null ? 0 : accelerationDelay,
    buildUpTime: buildUpOf(chain),
    chain,
    trace: () => traceOf(smoothed, start, end),
  };
}

/** m/s; slower is at rest. */
const stillness = 0.05;

/** s, where the smoothed speed has first gone; null where it never does. */
function restOf({ time, speed, start }: SmoothedStop): number | null {
  for (let i = start + 1; i < time.length; i += 1) {
    if (speed[i]! > stillness) continue;
    const fallen = speed[i - 1]! - speed[i]!;
    const share = fallen > 0 ? Math.min(1, speed[i - 1]! / fallen) : 1;
    return time[i - 1]! + share * (time[i]! - time[i - 1]!);
  }
  return null;
}

function chainOf({ time, speed, start }: SmoothedStop, end: number): SpeedRun {
  let last = start;
  while (last + 1 < time.length && time[last + 1]! < end) last += 1;
  const times = new Float64Array(last - start + 2);
  const speeds = new Float64Array(last - start + 2);
  times.set(time.subarray(start, last + 1));
  speeds.set(speed.subarray(start, last + 1));
  times[last - start + 1] = end;
  return { time: times, speed: speeds };
}

/** s; shorter differences of a smoothed speed are noise. */
const over = 0.1;

/** s from the start until the deceleration over 0.1 s is nine tenths of the developed one. */
function buildUpOf(chain: SpeedRun): number | null {
  const developed = fullyDevelopedDeceleration(chain, chain.speed[0]!);
  if (developed === null) return null;
  const { time } = chain;
  for (let i = 0; i < time.length && time[i]! + over < time[time.length - 1]!; i += 1) {
    const lost = chain.speed[i]! - speedAt(chain, time[i]! + over);
    if (lost / over >= 0.9 * developed) return time[i]! + over / 2 - time[0]!;
  }
  return null;
}
