import { trapezoid } from '@standstill/numerics';
import type { ChannelTable } from '../channels/channel-table.ts';
import { brakeStart, type BrakeSignal, type BrakeStart } from './brake-start.ts';
import { clockAt } from './clock-at.ts';
import { correctedDistance } from './corrected-distance.ts';
import { developedMean } from './developed-mean.ts';
import { distanceError } from './distance-error.ts';
import { downwardCrossing } from './downward-crossing.ts';
import type { FilledOptions } from './find-options.ts';
import type { FoundStop } from './found-stop.ts';
import { fullyDevelopedDeceleration } from './fully-developed-deceleration.ts';
import { headingAt } from './heading-at.ts';
import { onsetAtSample } from './onset-at-sample.ts';
import { estimateOnset, type OnsetEstimate } from './onset-estimate.ts';
import type { OnsetStart } from './onset-start.ts';
import { peakDeceleration } from './peak-deceleration.ts';
import { printerIn } from './printer.ts';
import type { RejectedStop } from './rejected-stop.ts';
import type { RestMoment } from './rest-moment.ts';
import { roughOnset } from './rough-onset.ts';
import { sampleJump } from './sample-jump.ts';
import { indexAt } from './speed-at.ts';
import type { SpeedRun, SpeedTrack } from './speed-run.ts';
import { stopFlags } from './stop-flags.ts';
import { stopTrace } from './stop-trace.ts';
import { temperaturesAt } from './temperatures-at.ts';

export interface StopContext {
  readonly table: ChannelTable;
  readonly track: SpeedTrack;
  readonly run: SpeedRun;
  readonly brakes: readonly BrakeSignal[];
  readonly options: FilledOptions;
}

/** s before the start from which the trace for drawing begins. */
const leadIn = 1;
/** Hz; slower samples don't show how the deceleration builds up. */
const showsBuildUp = 10;
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
  const brake = brakeStart(table, context.brakes, onset.time);
  const fitted = described(context, { rest, number, brake, onset, estimate: onset });
  const showsStep = track.interval <= slowestFit && fitted.meanDecelerationByDistance >= options.gentleBelow;
  const seenBefore = onset.time - run.time[0]!;
  if (rough.index === 0 && (!showsStep || seenBefore < Math.max(0.5, track.interval))) return startMissing();
  const plain = onsetAtSample(run, rough, track.interval, onset);
  const stop = showsStep
    ? fitted
    : described(context, { rest, number, brake, onset: plain, estimate: onset });
  const isStop = stop.entrySpeed >= options.minimumEntrySpeed;
  return isStop && stop.meanDecelerationByDistance >= options.minimumDeceleration ? stop : null;
}

interface StopParts {
  readonly rest: RestMoment;
  readonly number: number;
  readonly brake: BrakeStart | null;
  /** Where the stop begins and how its first part is measured. */
  readonly onset: OnsetStart;
  /** What the samples say of the build-up, whichever start is used. */
  readonly estimate: OnsetEstimate;
}

function described(
  { table, track, run, options }: StopContext,
  { rest, number, brake, onset, estimate }: StopParts,
): FoundStop {
  const latency = brake === null ? 0 : options.speedLatency.value;
  const onSpeedClock = brake === null ? null : brake.time + latency;
  const part = onset.from(onSpeedClock);
  const start = onSpeedClock ?? onset.time;
  const { entrySpeed } = part;
  const after = stopTrace(
    run,
    { time: run.time[onset.joins]!, speed: run.speed[onset.joins]! },
    rest.time,
    onset.joins + 1,
    rest.lastMoving,
  );
  const chain = stopTrace(
    run,
    { time: start, speed: entrySpeed },
    rest.time,
    indexAt(run, start) + 1,
    rest.lastMoving,
  );
  const distance = part.distance + trapezoid(after.time, after.speed);
  const duration = Math.max(rest.time - start, Number.MIN_VALUE);
  const developed = fullyDevelopedDeceleration(chain, entrySpeed);
  const gate = options.nominalSpeed === null ? null : downwardCrossing(chain, options.nominalSpeed);
  const figures = {
    number,
    startTime: start - latency,
    endTime: start - latency + duration,
    clock: clockAt(table, start - latency),
    startBy: brake?.by ?? 'deceleration-onset',
    entrySpeed,
    applicationDistance: distance,
    distanceStandardError: Math.hypot(
      part.standardError,
      brake === null ? 0 : entrySpeed * Math.hypot(brake.standardError, options.speedLatency.standardError),
      distanceError(after, onset.noise, onset.correlation),
      (run.speed[rest.lastMoving]! / 2) * rest.standardError,
    ),
    startDelayError: brake === null ? 0 : options.speedLatency.standardError,
    gateDistance: gate === null ? null : trapezoid(chain.time, chain.speed) - gate.distance,
    correctedDistance:
      options.nominalSpeed === null
        ? null
        : correctedDistance({
            distance,
            entrySpeed,
            nominalSpeed: options.nominalSpeed,
            grade: options.grade,
          }),
    duration,
    meanDecelerationByDistance: (entrySpeed * entrySpeed) / (2 * distance),
    meanDecelerationByTime: entrySpeed / duration,
    meanFullyDevelopedDeceleration: developed,
    peakDeceleration: peakDeceleration(chain),
    buildUpTime: track.interval <= 1.05 / showsBuildUp ? estimate.time - start + 0.9 * estimate.ramp : null,
    sampleRate: 1 / track.interval,
    temperatures: temperaturesAt(table, start - latency, rest.time - latency),
    developedPressure: developedMean(table, 'brake-pressure', chain, latency),
    developedPedalForce: developedMean(table, 'pedal-force', chain, latency),
    heading: headingAt(table, start - latency),
    trace: traceOf(run, start, rest),
  } satisfies Omit<FoundStop, 'flags'>;
  return {
    ...figures,
    flags: stopFlags(figures, { table, track, options, chain, rest, say: printerIn(options.units) }),
  };
}

function traceOf(run: SpeedRun, start: number, rest: RestMoment): FoundStop['trace'] {
  const first = Math.max(0, indexAt(run, start - leadIn));
  const count = rest.lastMoving + 1 - first;
  const time = new Float64Array(count + 1);
  const speed = new Float64Array(count + 1);
  time.set(run.time.subarray(first, rest.lastMoving + 1));
  speed.set(run.speed.subarray(first, rest.lastMoving + 1));
  time[count] = rest.time;
  const none = (): Float64Array => new Float64Array(count + 1);
  return { time, speed, speedStandardError: none(), deceleration: none() };
}
