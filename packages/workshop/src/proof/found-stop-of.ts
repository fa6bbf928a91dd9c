import type { FoundStop, StopFlag } from '@standstill/logs';
import type { StopResult } from '../results/log-report.ts';

/** s, as assumed by the reader of logs; for reports from before it was written down. */
const assumedDelayError = 0.05;

/** A reported stop as the logs room knows it, so that reports can be compared without their logs. */
export function foundStopOf(stop: StopResult): FoundStop {
  return {
    number: stop.number,
    startTime: stop.start_s,
    endTime: stop.end_s,
    clock: stop.clock,
    startBy: stop.startBy,
    entrySpeed: stop.entrySpeed_m_s,
    applicationDistance: stop.applicationDistance_m,
    distanceStandardError: stop.distanceStandardError_m,
    startDelayError:
      stop.startDelayError_s ?? (stop.startBy === 'deceleration-onset' ? 0 : assumedDelayError),
    gateDistance: stop.gateDistance_m,
    correctedDistance: stop.correctedDistance_m,
    duration: stop.duration_s,
    meanDecelerationByDistance: stop.meanDecelerationByDistance_m_s2,
    meanDecelerationByTime: stop.meanDecelerationByTime_m_s2,
    meanFullyDevelopedDeceleration: stop.meanFullyDevelopedDeceleration_m_s2,
    peakDeceleration: stop.peakDeceleration_m_s2,
    buildUpTime: stop.buildUpTime_s,
    sampleRate: stop.sampleRate_Hz,
    // Reports come from our own reader or through the report's schema.
    flags: stop.flags as readonly StopFlag[],
    temperatures: stop.temperatures.map(({ channel, start_C: start, end_C: end }) => ({
      channel,
      start,
      end,
    })),
    developedPressure: stop.developedPressure_Pa,
    developedPedalForce: stop.developedPedalForce_N,
    heading: stop.heading_rad,
    trace: {
      time: Float64Array.from(stop.trace.time_s),
      speed: Float64Array.from(stop.trace.speed_m_s),
      speedStandardError: Float64Array.from(stop.trace.speedStandardError_m_s),
      deceleration: Float64Array.from(stop.trace.deceleration_m_s2),
    },
  };
}
