import { accelerationOnset } from '../smooth/acceleration-onset.ts';
import { brakeStart } from './brake-start.ts';
import { clockAt } from './clock-at.ts';
import type { FoundStop } from './found-stop.ts';
import { motionBySamples } from './motion-by-samples.ts';
import { motionBySmoother } from './motion-by-smoother.ts';
import { onsetAtSample } from './onset-at-sample.ts';
import { estimateOnset, type OnsetEstimate } from './onset-estimate.ts';
import { printerIn } from './printer.ts';
import type { RejectedStop } from './rejected-stop.ts';
import type { RestMoment } from './rest-moment.ts';
import { roughOnset } from './rough-onset.ts';
import { sampleJump } from './sample-jump.ts';
import { indexAt } from './speed-at.ts';
import type { StopContext } from './stop-context.ts';
import { stopFigures } from './stop-figures.ts';
import type { StopMotion } from './stop-motion.ts';

/** s; with samples further apart no fit tells coasting from braking. */
const slowestFit = 1.5;

/**
 * Measures the stop that ends at a moment of rest.
 *
 * @param context - the log, its speed and what a person said
 * @param rest - the end of the stop
 * @param number - its number in the log
 * @returns the stop; why it is none; null where the car was too slow or only rolled out
 */
export function measureStop(
  context: StopContext,
  rest: RestMoment,
  number: number,
): FoundStop | RejectedStop | null {
  const { table, track, run, options } = context;
  const rough = roughOnset(run, rest, track.interval, track.resolution);
  if (run.speed[rough.index]! < options.minimumEntrySpeed) return null;
  const rejected = (code: RejectedStop['code'], reason: string): RejectedStop => ({
    code,
    reason,
    time: rest.time,
    clock: clockAt(table, rest.time),
  });
  const jump = sampleJump(run, rough.index, rest, run.speed[rough.index]!);
  if (jump !== null)
    return rejected(
      'sample-jump',
      `The speed jumps at ${printerIn(options.units)(jump, 'deceleration')}, which no car does: the record is damaged there.`,
    );
  const onset = estimateOnset(run, rough, rest, track.interval, track.resolution);
  const startMissing = (): RejectedStop =>
    rejected('start-not-in-log', 'The car was already slowing where the record begins or begins again.');
  if (onset === null) return startMissing();
  const brake = brakeStart(table, context.brakes, onset);
  const fitted = motionBySamples(context, { rest, brake, onset, estimate: onset });
  const meanDeceleration = fitted.entrySpeed ** 2 / (2 * fitted.distance);
  const showsStep = track.interval <= slowestFit && meanDeceleration >= options.gentleBelow;
  const seenBefore = onset.time - run.time[0]!;
  if (rough.index === 0 && (!showsStep || seenBefore < Math.max(0.5, track.interval))) return startMissing();
  const plain = onsetAtSample(run, rough, track.interval, onset);
  const motion = showsStep
    ? (withAcceleration(context, rest, onset, meanDeceleration) ?? fitted)
    : motionBySamples(context, { rest, brake, onset: plain, estimate: onset });
  const stop = stopFigures(context, { motion, rest, number });
  const isStop = stop.entrySpeed >= options.minimumEntrySpeed;
  return isStop && stop.meanDecelerationByDistance >= options.minimumDeceleration ? stop : null;
}

/** The stop by accelerometer and speed together; null where the accelerometer does not show it from start to rest. */
function withAcceleration(
  context: StopContext,
  rest: RestMoment,
  onset: OnsetEstimate,
  deceleration: number,
): StopMotion | null {
  const { acceleration } = context.sensors;
  if (acceleration === null || !rest.isSeen) return null;
  const { samples, interval } = acceleration;
  const reach = 1 + Math.min(1, context.track.interval);
  const search = { from: onset.time - reach - 0.5, to: onset.time + reach, deceleration, interval };
  if (!covers(samples.time, search.from, rest.time, interval)) return null;
  const sharp = accelerationOnset(samples, search);
  if (sharp === null) return null;
  return motionBySmoother(context, {
    onset: sharp,
    brake: brakeStart(context.table, context.brakes, sharp),
    rest,
  });
}

/** Whether an accelerometer has nine tenths of its samples between two times in s. */
function covers(time: Float64Array, from: number, to: number, interval: number): boolean {
  const run = { time, speed: time };
  return indexAt(run, to) - indexAt(run, from) >= (0.9 * (to - from)) / interval - 1;
}
