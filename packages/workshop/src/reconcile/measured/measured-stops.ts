import { correctedDistance } from '@standstill/logs';
import { mean } from '@standstill/numerics';
import type { LogReport, StopResult } from '../../results/log-report.ts';
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
  /** N, of each stop in which it was recorded. */
  readonly pedalForces: readonly number[];
}

/** Temperatures that are not of brakes, by the name of their channel. */
const notOfBrakes = /air|ambient|outside|oil|coolant|water|engine|tire|tyre|track|road|surface|cabin/i;
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
    pedalForces: stops.flatMap(({ stop }) => stop.developedPedalForce_N ?? []),
  };
}

function delayErrorOf({ startBy, startDelayError_s }: StopResult): number {
  return startDelayError_s ?? (startBy === 'deceleration-onset' ? 0 : assumedDelayError);
}

/** One number a figure; null where the log does not show it. */
function figuresOf(stop: StopResult, kept: boolean, nominalSpeed: number): readonly (number | null)[] {
  const developed = stop.meanFullyDevelopedDeceleration_m_s2;
  const over = (by: number | null): number | null =>
    developed !== null && by !== null && by > 0 ? developed / by : null;
  const row: (number | null)[] = figures.map(() => null);
  row[placeOf.distance] =
    (kept ? stop.correctedDistance_m : null) ??
    correctedDistance({
      distance: stop.applicationDistance_m,
      entrySpeed: stop.entrySpeed_m_s,
      nominalSpeed,
    });
  row[placeOf.developed] = developed;
  row[placeOf.buildUp] = stop.buildUpTime_s;
  row[placeOf.perPressure] = over(stop.developedPressure_Pa);
  row[placeOf.perForce] = over(stop.developedPedalForce_N);
  return row;
}

function startTemperatureOf(stops: readonly StopResult[]): StartTemperature | null {
  const starts = stops.map(({ temperatures }) =>
    temperatures.filter(({ channel }) => !notOfBrakes.test(channel)).map(({ start_C }) => start_C),
  );
  if (starts.length === 0 || starts.some((each) => each.length === 0)) return null;
  return { value: mean(starts.map(mean)), spread: temperatureError };
}
