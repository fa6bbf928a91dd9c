import { mean } from '@standstill/numerics';
import type { RunSet } from '../sets/run-set.ts';
import { setStops } from '../stop-set-of.ts';

/** One stop of a fade set as the model is to drive it. */
export interface DrivenStop {
  /** m/s. */
  readonly entrySpeed: number;
  /** s from the start of the stop before; 0 for the first. */
  readonly interval: number;
  readonly isCounted: boolean;
  /** m/s², mean over the distance. */
  readonly deceleration: number;
}

/** The stops of a set as they were driven; between two logs nobody knows the rest, so the mean of the others is taken. */
export function drivenStops(set: RunSet): readonly DrivenStop[] {
  const stops = setStops(set);
  const gaps = stops.map(({ stop, log }, index) => {
    const previous = stops[index - 1];
    if (previous === undefined || previous.log !== log) return null;
    return stop.start_s - previous.stop.start_s;
  });
  const known = gaps.filter((gap) => gap !== null);
  const usual = known.length === 0 ? usualInterval : mean(known);
  return stops.map(({ stop }, index) => ({
    entrySpeed: stop.entrySpeed_m_s,
    interval: index === 0 ? 0 : (gaps[index] ?? usual),
    isCounted: stop.counted,
    deceleration: stop.meanDecelerationByDistance_m_s2,
  }));
}

/** s; taken where each stop has a log of its own (common practice). */
const usualInterval = 60;
