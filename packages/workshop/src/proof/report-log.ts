import { readLog, searchStops } from '@standstill/logs';
import type { ChannelTable, FindOptions, FoundStop, ReadOptions, UsedSensor } from '@standstill/logs';
import type { LogRefusal, LogReport, SensorResult, StopResult } from '../results/log-report.ts';
import type { LogColumnsDocument } from '../job/document/log-columns-schema.ts';
import type { GivenJudgement } from './judge/given-judgement.ts';
import { logSentence } from './log-sentence.ts';
import type { RejectedStop } from './log-sentence.ts';

export interface LogFile {
  readonly name: string;
  readonly content: Uint8Array;
}

export interface ReportLogOptions {
  /** m/s, speed that the stops were meant from; distances are only as driven where absent. */
  readonly nominalSpeed?: number;
  /** A person's word on what the columns are; overrules every guess. */
  readonly columns?: NonNullable<ReadOptions['columns']>;
  /** Rise over run in the direction of travel, uphill positive. */
  readonly grade?: number;
  /** A person's word on stops: by a moment inside the stop, s on the log's time base. */
  readonly judgements?: readonly GivenJudgement[];
  /** Columns that a person chose before, found again by the log's line of headings; `columns` comes before them. */
  readonly remembered?: readonly LogColumnsDocument[];
  /** °C, between which the brakes are to be when a stop begins; a stop outside is left out. */
  readonly startTemperature?: NonNullable<FindOptions['startTemperature']>;
  readonly units?: 'us' | 'metric';
}

/**
 * Reads a log and says which stops are in it, how far each went, and what is doubtful about each.
 *
 * @param file - name and bytes, as they came
 * @param options - nominal speed, m/s; columns; grade, 1; units of the sentence
 * @returns the report, distances in m, speeds in m/s; or one sentence that says why the log can't be used
 */
export function reportLog(file: LogFile, options: ReportLogOptions = {}): LogReport | LogRefusal {
  const { columns, nominalSpeed, grade, units = 'us' } = options;
  const outcome = readLog(file.content, { name: file.name, ...(columns === undefined ? {} : { columns }) });
  if (!outcome.ok) return refusal(file, outcome.code, outcome.sentence);
  const { table } = outcome;
  const { stops, rejected, sensors } = searchStops(table, {
    ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
    ...(grade === undefined ? {} : { grade }),
    units,
  });
  const results = stops.map(stopResultOf);
  const nominalSpeed_m_s = nominalSpeed ?? null;
  return {
    kind: 'log-report',
    version: 1,
    sentence: logSentence({
      name: file.name,
      stops: results,
      rejected,
      nominalSpeed: nominalSpeed_m_s,
      units,
    }),
    source: { ...table.source, name: file.name },
    epoch: table.epoch,
    duration_s: durationOf(table),
    channels: table.channels.map(({ name, quantity, unitAsRead, unitOrigin, chosenBy }) => ({
      name,
      quantity,
      unitAsRead,
      unitOrigin,
      chosenBy,
    })),
    headings: table.headings,
    sensors: sensors.map(sensorOf),
    issues: [...table.issues.map((issue) => ({ ...issue })), ...rejected.map(issueOf)],
    nominalSpeed_m_s,
    stops: results,
  };
}

function refusal({ name, content }: LogFile, code: string, sentence: string): LogRefusal {
  return { kind: 'log-refusal', version: 1, code, sentence, source: { name, bytes: content.length } };
}

function durationOf({ time }: ChannelTable): number {
  return (time.at(-1) ?? 0) - (time[0] ?? 0);
}

function issueOf({ code, reason }: RejectedStop): LogReport['issues'][number] {
  return { code, message: reason, line: null, count: 1 };
}

function stopResultOf(stop: FoundStop): StopResult {
  return {
    number: stop.number,
    clock: stop.clock,
    start_s: stop.startTime,
    end_s: stop.endTime,
    startBy: stop.startBy,
    entrySpeed_m_s: stop.entrySpeed,
    applicationDistance_m: stop.applicationDistance,
    distanceStandardError_m: stop.distanceStandardError,
    startDelayError_s: stop.startDelayError,
    gateDistance_m: stop.gateDistance,
    correctedDistance_m: stop.correctedDistance,
    duration_s: stop.duration,
    meanDecelerationByDistance_m_s2: stop.meanDecelerationByDistance,
    meanDecelerationByTime_m_s2: stop.meanDecelerationByTime,
    meanFullyDevelopedDeceleration_m_s2: stop.meanFullyDevelopedDeceleration,
    peakDeceleration_m_s2: stop.peakDeceleration,
    buildUpTime_s: stop.buildUpTime,
    sampleRate_Hz: stop.sampleRate,
    counted: !stop.flags.some(({ severity }) => severity === 'excludes'),
    flags: stop.flags.map((flag) => ({ ...flag })),
    judgement: null,
    temperatures: stop.temperatures.map(({ channel, start, end }) => ({
      channel,
      start_C: start,
      end_C: end,
    })),
    developedPressure_Pa: stop.developedPressure,
    developedPedalForce_N: stop.developedPedalForce,
    heading_rad: stop.heading,
    trace: traceOf(stop),
  };
}

/** Gaps have no number to show and are left out of the drawing. */
function traceOf({ trace }: FoundStop): StopResult['trace'] {
  const there = Array.from(trace.speed.keys()).filter((row) => Number.isFinite(trace.speed[row]));
  return {
    time_s: there.map((row) => trace.time[row] ?? 0),
    speed_m_s: there.map((row) => trace.speed[row] ?? 0),
    speedStandardError_m_s: there.map((row) => trace.speedStandardError[row] ?? 0),
    deceleration_m_s2: there.map((row) => trace.deceleration[row] ?? 0),
  };
}

function sensorOf({ tilt, ...sensor }: UsedSensor): SensorResult {
  return { ...sensor, tilt_rad: tilt };
}
