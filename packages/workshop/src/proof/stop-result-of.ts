import { reasonLeftOut } from '@standstill/logs';
import type { FoundStop } from '@standstill/logs';
import type { StopResult } from '../results/log-report.ts';

/** A found stop as it is published: the unit in each key, gaps left out of the drawing. Nobody has judged it yet. */
export function stopResultOf(stop: FoundStop): StopResult {
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
    counted: reasonLeftOut(stop, null) === null,
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

/** Gaps have no number to show. */
function traceOf({ trace }: FoundStop): StopResult['trace'] {
  const there = Array.from(trace.speed.keys()).filter((row) => Number.isFinite(trace.speed[row]));
  return {
    time_s: there.map((row) => trace.time[row] ?? 0),
    speed_m_s: there.map((row) => trace.speed[row] ?? 0),
    speedStandardError_m_s: there.map((row) => trace.speedStandardError[row] ?? 0),
    deceleration_m_s2: there.map((row) => trace.deceleration[row] ?? 0),
  };
}
