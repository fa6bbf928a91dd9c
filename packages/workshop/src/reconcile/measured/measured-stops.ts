import { brakeTemperatures, correctedDistance } from '@standstill/logs';
import { mean } from '@standstill/numerics';
import type { LogReport, StopResult } from '../../results/log-report.ts';
import { foundStopOf } from '../../proof/found-stop-of.ts';
import { figures, placeOf } from '../figure.ts';
import type { StartTemperature } from '../model/day-knowns.ts';

/** One set of stops as the model is held against it. */
export interface MeasuredStops {
  readonly stops: readonly StopResult[];
  readonly startsAtOnset: boolean;
  /** Places of the figures that every stop has, ascending; the distance is always the first. */
  readonly places: readonly number[];
  /** One row a stop, one number a place, SI. */
  readonly rows: readonly (readonly number[])[];
  /** s, one standard error of the delay between brake signal and speed, the same for all stops. */
  readonly delayError: number;
  readonly startTemperature: StartTemperature | null;
  /** True where the distances are corrected to level ground. */
  readonly isLevel: boolean;
  /** N, of each stop in which it was recorded. */
  readonly pedalForces: readonly number[];
}

/** °C that a reading is off from the rotor's own, one standard deviation (assumed). */
const temperatureError = 5;
/** s; for reports from before it was written down. */
const assumedDelayError = 0.05;

/**
 * Takes from reports what the model has an answer to.
 *
 * @param reports - of one set, in run order
 * @param nominalSpeed - m/s that distances are corrected to
 * @returns the stops that count with their figures, SI
 */
export function measuredStops(reports: readonly LogReport[], nominalSpeed: number): MeasuredStops {
  const stops = reports.flatMap(({ stops: found, nominalSpeed_m_s: own }) => {
    const kept = own !== null && Math.abs(own - nominalSpeed) <= 1e-6;
    return found.filter(({ counted }) => counted).map((stop) => ({ stop, kept }));
  });
  const all = stops.map(({ stop, kept }) => figuresOf(stop, kept, nominalSpeed));
  const places = figures.map((_, place) => place).filter((place) => all.every((row) => row[place] !== null));
  const onsets = stops.filter(({ stop }) => stop.startBy === 'deceleration-onset').length;
  return {
    stops: stops.map(({ stop }) => stop),
    startsAtOnset: 2 * onsets > stops.length,
    places,
    rows: all.map((row) => places.map((place) => row[place]!)),
    delayError: stops.length === 0 ? 0 : mean(stops.map(({ stop }) => delayErrorOf(stop))),
    startTemperature: startTemperatureOf(stops.map(({ stop }) => stop)),
    isLevel: stops.some(({ stop, kept }) => kept && byGrade(stop, nominalSpeed) !== 0),
    pedalForces: stops.flatMap(({ stop }) => stop.developedPedalForce_N ?? []),
  };
}

function delayErrorOf({ startBy, startDelayError_s }: StopResult): number {
  return startDelayError_s ?? (startBy === 'deceleration-onset' ? 0 : assumedDelayError);
}

/** One number a figure, on level ground where the distance is; null where the log does not show it. */
function figuresOf(stop: StopResult, kept: boolean, nominalSpeed: number): readonly (number | null)[] {
  const driven = stop.meanFullyDevelopedDeceleration_m_s2;
  const developed = driven === null ? null : driven - (kept ? byGrade(stop, nominalSpeed) : 0);
  const over = (by: number | null): number | null =>
    developed !== null && by !== null && by > 0 ? developed / by : null;
  const row: (number | null)[] = figures.map(() => null);
  row[placeOf.distance] = (kept ? stop.correctedDistance_m : null) ?? asDriven(stop, nominalSpeed);
  row[placeOf.developed] = developed;
  row[placeOf.buildUp] = stop.buildUpTime_s;
  row[placeOf.perPressure] = over(stop.developedPressure_Pa);
  row[placeOf.perForce] = over(stop.developedPedalForce_N);
  return row;
}

/** m, corrected to the nominal speed, m/s, and not to level ground. */
function asDriven(
  { applicationDistance_m: distance, entrySpeed_m_s: entrySpeed }: StopResult,
  nominalSpeed: number,
): number {
  return correctedDistance({ distance, entrySpeed, nominalSpeed });
}

/** 1: a correction to level ground under this is the rounding of one that is none. */
const noCorrection = 1e-9;

/**
 * m/s² of a stop's deceleration that its correction to level ground took for the grade's.
 *
 * Equation: S_corrected / S_driven = a / (a − g sin α), so g sin α = a (1 − S_driven / S_corrected), a = V² / (2 S)
 */
function byGrade(stop: StopResult, nominalSpeed: number): number {
  if (stop.correctedDistance_m === null) return 0;
  const share = 1 - asDriven(stop, nominalSpeed) / stop.correctedDistance_m;
  if (Math.abs(share) < noCorrection) return 0;
  return (share * stop.entrySpeed_m_s ** 2) / (2 * stop.applicationDistance_m);
}

function startTemperatureOf(stops: readonly StopResult[]): StartTemperature | null {
  const starts = stops.map((stop) => brakeTemperatures(foundStopOf(stop)).map(({ start }) => start));
  if (starts.length === 0 || starts.some((each) => each.length === 0)) return null;
  return { value: mean(starts.map(mean)), spread: temperatureError };
}
