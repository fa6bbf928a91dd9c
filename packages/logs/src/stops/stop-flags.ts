import type { ChannelTable } from '../channels/channel-table.ts';
import { brakeTemperatures } from './brake-temperatures.ts';
import type { FilledOptions } from './find-options.ts';
import type { FoundStop, StopFlag } from './found-stop.ts';
import type { Printer } from './printer.ts';
import type { RestMoment } from './rest-moment.ts';
import { speedFromPositionsName } from '../read/positions/speed-from-positions-name.ts';
import { rowsBetween } from './rows-between.ts';
import { greatestDeceleration } from './sample-jump.ts';
import { speedOffNominal } from './speed-off-nominal.ts';
import type { SpeedRun, SpeedTrack } from './speed-run.ts';
import { squaredRatioBias } from './squared-ratio-bias.ts';
import { wheelsDisagree } from './wheels-disagree.ts';
import { turnedBy } from './turned-by.ts';

export interface FlagContext {
  readonly table: ChannelTable;
  readonly track: SpeedTrack;
  readonly options: FilledOptions;
  /** The stop from its start to rest. */
  readonly chain: SpeedRun;
  readonly rest: RestMoment;
  readonly say: Printer;
}

type Figures = Omit<FoundStop, 'flags'>;
type Rule = (stop: Figures, context: FlagContext) => StopFlag | null;

/** Hz; a stop sampled more slowly is known to feet only where it is long. Common practice. */
const wantedRate = 10;
/** From this number on GGA's fix quality means dead reckoning, hand input or simulation. */
const estimatedFix = 6;
/** rad, 10°, that a stop may turn before it is no straight stop. Common practice. */
const greatestTurn = Math.PI / 18;

const rules: readonly Rule[] = [
  impossible,
  wheels,
  offNominal,
  gentle,
  startTemperature,
  notToRest,
  lowRate,
  held,
  gap,
  assumedScale,
  poorFix,
  notStraight,
];

/**
 * Judges a stop: what keeps it out of a set and what must be said beside it.
 *
 * @param stop - its figures
 * @param context - the log that it was found in
 * @returns the flags, those that exclude first
 */
export function stopFlags(stop: Figures, context: FlagContext): readonly StopFlag[] {
  const flags = rules.map((rule) => rule(stop, context)).filter((flag) => flag !== null);
  return [
    ...flags.filter(({ severity }) => severity === 'excludes'),
    ...flags.filter(({ severity }) => severity === 'warns'),
  ];
}

function impossible(
  { meanDecelerationByDistance, meanFullyDevelopedDeceleration }: Figures,
  { say }: FlagContext,
): StopFlag | null {
  const greatest = Math.max(meanDecelerationByDistance, meanFullyDevelopedDeceleration ?? 0);
  if (greatest <= greatestDeceleration) return null;
  return excludes(
    'impossible-deceleration',
    `A mean of ${say(greatest, 'deceleration')} is more than tires on a road hold (1.6 g).`,
  );
}

function wheels(stop: Figures, { table, say }: FlagContext): StopFlag | null {
  const difference = wheelsDisagree(table, stop.startTime, stop.endTime);
  if (difference === null) return null;
  return excludes(
    'wheels-disagree',
    `The wheels differ by up to ${say(difference, 'speed')} before the brakes bite: their speed is not the car's.`,
  );
}

function offNominal(stop: Figures, { options, say }: FlagContext): StopFlag | null {
  if (options.nominalSpeed === null) return null;
  const verdict = speedOffNominal(stop.entrySpeed, options.nominalSpeed);
  const percent = (stop.entrySpeed / options.nominalSpeed) * 100;
  // Rounded down: what is just under the limit must not read as if it were on it.
  const share = (Math.floor(percent * 10) / 10).toFixed(1);
  if (verdict === 'too-slow')
    return excludes(
      'speed-off-nominal',
      `The entry speed is ${share} % of the nominal speed; at least 98 % is wanted.`,
    );
  if (verdict === 'too-fast')
    return excludes(
      'speed-off-nominal',
      `The entry speed is ${share} % of the nominal speed, more than ${say(12 / 3.6, 'speed')} over it.`,
    );
  const bias = correctionBias(stop, options.nominalSpeed);
  if (Math.abs(bias) < 0.0025) return null;
  return warns(
    'speed-off-nominal',
    `The entry speed is ${share} % of the nominal speed; the correction with the squared ratio then errs by about ${(bias * 100).toFixed(1)} %.`,
  );
}

/** Of the part that grows only with the speed: build-up and dead time, known or taken as 0.3 s. */
function correctionBias(stop: Figures, nominalSpeed: number): number {
  const delay = Math.min(1, Math.max(0, (stop.buildUpTime ?? 0.6) / 2));
  const deceleration = stop.meanFullyDevelopedDeceleration ?? stop.meanDecelerationByDistance;
  return squaredRatioBias({
    delay,
    deceleration: Math.max(0.1, Math.min(deceleration, 50)),
    entrySpeed: stop.entrySpeed,
    nominalSpeed,
  });
}

function gentle({ meanDecelerationByDistance }: Figures, { options, say }: FlagContext): StopFlag | null {
  if (meanDecelerationByDistance >= options.gentleBelow) return null;
  return excludes(
    'gentle',
    `A mean of ${say(meanDecelerationByDistance, 'deceleration')} is a traffic stop, not a brake test (under ${say(options.gentleBelow, 'deceleration')}).`,
  );
}

function startTemperature(stop: Figures, { options, say }: FlagContext): StopFlag | null {
  const window = options.startTemperature;
  if (window === null) return null;
  const temperatures = brakeTemperatures(stop);
  const wanted = `${say(window.low, 'temperature')} to ${say(window.high, 'temperature')}`;
  if (temperatures.length === 0)
    return warns(
      'start-temperature',
      `No brake temperature was recorded at the start; ${wanted} is wanted and can't be judged.`,
    );
  const outside = temperatures.find(({ start }) => start < window.low || start > window.high);
  if (outside === undefined) return null;
  return excludes(
    'start-temperature',
    `${outside.channel} read ${say(outside.start, 'temperature')} at the start; ${wanted} is wanted.`,
  );
}

function notToRest({ endTime }: Figures, { rest }: FlagContext): StopFlag | null {
  if (rest.isSeen) return null;
  return warns(
    'not-to-rest',
    `The record ends before the car is at rest; the last part up to ${endTime.toFixed(1)} s is extrapolated.`,
  );
}

function lowRate(stop: Figures, { say, track }: FlagContext): StopFlag | null {
  const { sampleRate, distanceStandardError, entrySpeed } = stop;
  if (sampleRate >= wantedRate / 1.05) return null;
  // A difference of positions is the mean speed over two steps: it begins to fall a step before the brakes bite.
  if (track.channel.name === speedFromPositionsName)
    return excludes(
      'low-rate',
      `The speed was computed from positions ${track.interval.toFixed(2)} s apart: that stretches a stop by up to ${say(entrySpeed * track.interval, 'stopping-distance')}. Log the receiver's own speed, ten times a second.`,
    );
  return warns(
    'low-rate',
    `Only ${sampleRate.toFixed(1)} new readings a second: the distance is known to about ${say(1.96 * distanceStandardError, 'stopping-distance')} either way.`,
  );
}

function held(_: Figures, { track }: FlagContext): StopFlag | null {
  if (!track.wasHeld) return null;
  return warns(
    'held-values',
    `The rows repeat the last known speed; only the real updates, every ${track.interval.toFixed(2)} s, were used.`,
  );
}

function gap(_: Figures, { track, chain }: FlagContext): StopFlag | null {
  let longest = 0;
  for (let i = 2; i < chain.time.length - 1; i += 1)
    longest = Math.max(longest, chain.time[i]! - chain.time[i - 1]!);
  if (longest <= Math.max(0.1, 1.9 * track.interval) || (track.wasHeld && longest <= 3 * track.interval))
    return null;
  return warns(
    'sample-gap',
    `Samples are missing for ${longest.toFixed(2)} s; a straight line bridges them.`,
  );
}

function assumedScale(_: Figures, { track }: FlagContext): StopFlag | null {
  if (track.channel.unitOrigin !== 'assumed') return null;
  return warns(
    'scale-assumed',
    'The unit or scale of the speed was assumed, not given: distance and deceleration hang on it.',
  );
}

function poorFix({ startTime, endTime }: Figures, { table }: FlagContext): StopFlag | null {
  const quality = table.channels.find(({ name }) => name === 'GGA fix quality');
  if (quality === undefined) return null;
  const { first, end } = rowsBetween(table, startTime, endTime);
  const isPoor = quality.values.subarray(first, end).some((value) => value === 0 || value >= estimatedFix);
  return isPoor ? warns('poor-fix', 'The receiver had no fix of its own for part of the stop.') : null;
}

function notStraight({ startTime, endTime }: Figures, { table, chain }: FlagContext): StopFlag | null {
  const turn = turnedBy(table, chain, startTime, endTime);
  if (turn === null || turn <= greatestTurn) return null;
  return warns(
    'not-straight',
    `The heading turns by ${((turn * 180) / Math.PI).toFixed(0)}° during the stop.`,
  );
}

function excludes(code: StopFlag['code'], reason: string): StopFlag {
  return { code, severity: 'excludes', reason };
}

function warns(code: StopFlag['code'], reason: string): StopFlag {
  return { code, severity: 'warns', reason };
}
