import type { SmoothedStop } from '../smooth/backward-pass.ts';
import type { FoundStop } from './found-stop.ts';
import type { RestMoment } from './rest-moment.ts';
import { sensorsAround } from './sensors-around.ts';
import type { StopContext } from './stop-context.ts';

/** s before the start from which a trace is drawn. */
const leadIn = 1;

/**
 * A stop as it is drawn, smoothed from its speed alone, whose delay is then taken as it was given.
 *
 * @param context - the log
 * @param stop - s: start and end on the log's base, how late the speed is, how long the deceleration builds up
 * @returns s, m/s and m/s² from a second before the start to rest
 */
export function drawnTrace(
  context: StopContext,
  stop: {
    readonly start: number;
    readonly end: number;
    readonly rest: RestMoment;
    readonly latency: number;
    readonly build: number;
  },
): FoundStop['trace'] {
  const smoothed = context.sensors.smooth(
    sensorsAround(context, {
      start: stop.start,
      onset: stop.start,
      build: stop.build,
      rest: stop.rest,
      latency: { value: stop.latency, standardError: 0 },
      withAcceleration: false,
    }),
  );
  return traceOf(smoothed, stop.start, stop.end);
}

/**
 * The part of a smoothed motion that is drawn, with a last point at rest.
 *
 * @param smoothed - the motion
 * @param start - s
 * @param end - s, rest
 * @returns s, m/s and m/s²
 */
export function traceOf(smoothed: SmoothedStop, start: number, end: number): FoundStop['trace'] {
  const { time, speed, speedError, acceleration } = smoothed;
  const first = Math.max(
    0,
    time.findIndex((moment) => moment >= start - leadIn),
  );
  const after = time.findIndex((moment) => moment >= end - 1e-6);
  const last = after < 0 ? time.length : after;
  const ended = (values: Float64Array, final: number): Float64Array => {
    const drawn = new Float64Array(last - first + 1);
    drawn.set(values.subarray(first, last));
    drawn[last - first] = final;
    return drawn;
  };
  const slowing = acceleration.map((value) => -value);
  return {
    time: ended(time, end),
    speed: ended(speed, 0),
    speedStandardError: ended(speedError, speedError[Math.max(0, last - 1)] ?? 0),
    deceleration: ended(slowing, slowing[Math.max(0, last - 1)] ?? 0),
  };
}
