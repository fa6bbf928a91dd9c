import { trapezoid } from '@standstill/numerics';
import type { BrakeStart } from './brake-start.ts';
import { distanceError } from './distance-error.ts';
import type { OnsetEstimate } from './onset-estimate.ts';
import type { OnsetStart } from './onset-start.ts';
import type { RestMoment } from './rest-moment.ts';
import { indexAt } from './speed-at.ts';
import type { StopContext } from './stop-context.ts';
import type { StopMotion } from './stop-motion.ts';
import { stopTrace } from './stop-trace.ts';
import { drawnTrace } from './drawn-trace.ts';

export interface SampledParts {
  readonly rest: RestMoment;
  readonly brake: BrakeStart | null;
  /** Where the stop begins and how its first part is measured. */
  readonly onset: OnsetStart;
  /** What the samples say of the build-up, whichever start is used. */
  readonly estimate: OnsetEstimate;
}

/** Hz; slower samples don't show how the deceleration builds up. */
const showsBuildUp = 10;
/** Share by which wheels that brake run slower than the car, where they are all that is known: half a slip of 3 %. Common practice. */
const wheelSlip = 0.015;

/**
 * The motion of a stop by the samples of its speed alone: a fitted beginning, then straight lines from sample to sample.
 *
 * Assumes: a speed that is made of wheels is low by a slip that is not known; the standard error has 1.5 % for it.
 *
 * @param context - the log, its speed and what a person said
 * @param parts - start and rest
 * @returns the motion, m and s
 * Source: [common-practice]
 */
export function motionBySamples(context: StopContext, parts: SampledParts): StopMotion {
  const { run, track, options } = context;
  const { rest, brake, onset, estimate } = parts;
  const latency = brake === null ? 0 : options.speedLatency.value;
  const onSpeedClock = brake === null ? null : brake.time + latency;
  const part = onset.from(onSpeedClock);
  const start = onSpeedClock ?? onset.time;
  const { entrySpeed } = part;
  const joined = { time: run.time[onset.joins]!, speed: run.speed[onset.joins]! };
  const after = stopTrace(run, joined, rest.time, onset.joins + 1, rest.lastMoving);
  const begin = { time: start, speed: entrySpeed };
  const { time, speed } = stopTrace(run, begin, rest.time, indexAt(run, start) + 1, rest.lastMoving);
  const chain = { time: time.map((moment) => moment - latency), speed };
  const distance = part.distance + trapezoid(after.time, after.speed);
  const delayError = brake === null ? 0 : Math.hypot(brake.standardError, options.speedLatency.standardError);
  const end = start - latency + Math.max(rest.time - start, Number.MIN_VALUE);
  return {
    startBy: brake?.by ?? 'deceleration-onset',
    start: start - latency,
    end,
    entrySpeed,
    distance,
    distanceError: Math.hypot(
      part.standardError,
      entrySpeed * delayError,
      distanceError(after, onset.noise, onset.correlation),
      (run.speed[rest.lastMoving]! / 2) * rest.standardError,
      track.channel.quantity === 'wheel-speed' ? wheelSlip * distance : 0,
    ),
    startDelayError: brake === null ? 0 : options.speedLatency.standardError,
    buildUpTime: track.interval <= 1.05 / showsBuildUp ? estimate.time - start + estimate.nearlyFull : null,
    chain,
    trace: () =>
      drawnTrace(context, { start: start - latency, end, rest, latency, build: estimate.nearlyFull }),
  };
}
