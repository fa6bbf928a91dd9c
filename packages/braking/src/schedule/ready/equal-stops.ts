import { requireRange } from '@standstill/numerics';
import type { Foot } from '../../set-up/foot.ts';
import { usualRegain } from '../../stop/repeated-stops.ts';
import type { ScheduleEvent } from '../schedule-event.ts';

export interface EqualStopsInput {
  /** How many. */
  readonly count: number;
  /** v_0, m/s. */
  readonly speed: number;
  /** s from first touch to first touch. */
  readonly interval: number;
  /** What the foot does. */
  readonly foot: Foot;
  /** m/s²; `usualRegain` where left out. */
  readonly regain?: number;
}

/**
 * Answers N equal stops under one foot at an interval, the speed regained at an acceleration in between.
 *
 * @param input - count; v_0, m/s; interval, s; foot, N and s; acceleration, m/s²
 * @returns the events
 * @throws OutOfRangeError where an input cannot be
 * Source: [newcomb-spurr]
 * @example
 * equalStops({ count: 3, speed: 27.8, interval: 45, foot: { force: 300, rampTime: 0.2 } }).length // => 5
 */
export function equalStops({
  count,
  speed,
  interval,
  foot,
  regain,
}: EqualStopsInput): readonly ScheduleEvent[] {
  requireRange('number of stops', count, '', 1, 1000);
  requireRange('interval', interval, 's', 0, 36_000);
  const stop: ScheduleEvent = { kind: 'stop', from: speed, foot };
  const between: ScheduleEvent = { kind: 'regain', to: speed, rate: regain ?? usualRegain, interval };
  return Array.from({ length: count }, (_, at) => (at === 0 ? [stop] : [between, stop])).flat();
}
