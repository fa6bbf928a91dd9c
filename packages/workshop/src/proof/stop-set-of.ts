import type { StopCovariates, StopSet } from '@standstill/logs';
import type { JobRun } from '../job/job.ts';
import type { StopResult } from '../results/log-report.ts';
import { directionOf } from './direction-of.ts';
import { startTemperatureOf } from './differences/measured-condition.ts';
import { foundStopOf } from './found-stop-of.ts';
import type { RunSet } from './sets/run-set.ts';

/** One stop of a set with the report and the run that it comes from. */
export interface SetStop {
  readonly stop: StopResult;
  /** File name of the log. */
  readonly log: string;
  readonly run: JobRun | null;
}

/** All stops of a set in run order: the place of each is the index that the statistics speak of. */
export function setStops({ reports, runs = [] }: RunSet): readonly SetStop[] {
  return reports.flatMap(({ stops, source }, index) =>
    stops.map((stop) => ({ stop, log: source.name, run: runs[index] ?? null })),
  );
}

/**
 * A set of reports as the statistics take it: stops with what was written down of each and what a person judged. A
 * correction to another nominal speed is made anew from the distance as driven.
 *
 * @param set - reports in run order, with their runs
 * @param nominalSpeed - m/s
 * @param axis - rad from north, heading of a stop that counts as driven out; null where it is not to be told by headings
 * @returns the stops
 */
export function stopSetOf(set: RunSet, nominalSpeed: number, axis: number | null = null): StopSet {
  const speeds = set.reports.flatMap(({ stops, nominalSpeed_m_s: own }) => stops.map(() => own));
  const stops = setStops(set);
  return {
    name: set.name,
    stops: stops.map(({ stop }, index) => {
      const own = speeds[index] ?? null;
      const isKept = own !== null && Math.abs(own - nominalSpeed) <= 1e-6;
      return { ...foundStopOf(stop), ...(isKept ? {} : { correctedDistance: null }) };
    }),
    covariates: stops.map((stop) => covariatesOf(stop, axis)),
    judgements: stops.map(({ stop }) => stop.judgement),
  };
}

/** rad from north, what counts as out: the first recorded heading of a set, unless its run was driven back; null without one. */
export function headingAxis(set: RunSet): number | null {
  const first = setStops(set).find(({ stop }) => stop.heading_rad !== null);
  if (first === undefined || first.stop.heading_rad === null) return null;
  return first.run?.direction === 'back' ? first.stop.heading_rad + Math.PI : first.stop.heading_rad;
}

/** Only what was recorded or written down; each run states its own wind and temperatures. */
function covariatesOf(from: SetStop, axis: number | null): StopCovariates {
  const { stop, run } = from;
  const startTemperature = startTemperatureOf(stop) ?? run?.startTemperature?.value;
  const values = {
    direction: directionOf(from, axis),
    headWind: run?.headWind?.value,
    surfaceTemperature: run?.surfaceTemperature?.value,
    tireTemperature: run?.tireTemperature?.value,
    startTemperature,
  };
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}
