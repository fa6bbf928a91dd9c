import type { UnitSystem } from '@standstill/units';
import type { StopResult } from '@standstill/workshop';
import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { roadScale, type RoadScale } from '../road/road-scale.ts';
import { sheetEdges } from '../sheet/sheet-size.ts';

/** What all stops of a sheet share, so that a foot, a second and a mile an hour are as long for each of them. */
export interface StopScales {
  readonly road: RoadScale;
  /** px across, of s from the start. */
  readonly time: ScaleLinear<number, number>;
  /** m/s, the fastest. */
  readonly fastest: number;
  /** m/s², the hardest. */
  readonly hardest: number;
}

/** px left of the charts for the figures of their axes. */
const axisRoom = 40;

/** A foot and a second fit every stop that counts, or every stop where none does: longer ones run off the end. */
export function stopScales(stops: readonly StopResult[], units: UnitSystem): StopScales {
  const counted = stops.filter((stop) => stop.counted);
  const fitted = counted.length > 0 ? counted : stops;
  const far = most(fitted, (stop) => stop.applicationDistance_m + 2 * stop.distanceStandardError_m);
  const long = most(fitted, (stop) => stop.duration_s);
  return {
    road: roadScale({ reach: 1.08 * far }, units),
    time: scaleLinear([-1, long + 0.3], [sheetEdges.left + axisRoom, sheetEdges.right]),
    fastest: 1.05 * most(stops, fastestOf),
    hardest: 1.12 * most(stops, hardestOf),
  };
}

function most(stops: readonly StopResult[], of: (stop: StopResult) => number): number {
  return Math.max(1, ...stops.map(of).filter(Number.isFinite));
}

/** With the band, unless that is wide enough to flatten the rest. */
function fastestOf({ trace, entrySpeed_m_s: entry }: StopResult): number {
  const fastest = greatest(trace.speed_m_s, entry);
  const band = trace.speed_m_s.map((speed, row) => speed + 1.96 * (trace.speedStandardError_m_s[row] ?? 0));
  return Math.min(greatest(band, fastest), 1.3 * fastest);
}

function hardestOf({ trace, meanFullyDevelopedDeceleration_m_s2: developed }: StopResult): number {
  return greatest(trace.deceleration_m_s2, developed ?? 0);
}

/** A long list can't be spread into a call. */
function greatest(values: readonly number[], least: number): number {
  return values.reduce((high, value) => (value > high ? value : high), least);
}
