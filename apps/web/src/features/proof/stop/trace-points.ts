import type { StopResult } from '@standstill/workshop';

export interface TracePoint {
  /** m from the start of the stop. */
  readonly distance: number;
  /** m/s. */
  readonly speed: number;
}

/** What of a stop is drawn. */
export interface TracedStop {
  readonly start_s: number;
  readonly trace: Pick<StopResult['trace'], 'time_s' | 'speed_m_s'>;
}

/** The trace of a stop along the road instead of over time: from its start, trapezoids of speed over time. */
export function tracePoints({ start_s, trace }: TracedStop): readonly TracePoint[] {
  const points: TracePoint[] = [];
  let time = start_s;
  for (let index = 0; index < trace.time_s.length; index++) {
    const [next, speed] = [trace.time_s[index] ?? NaN, trace.speed_m_s[index] ?? NaN];
    if (!Number.isFinite(next) || !Number.isFinite(speed) || next < start_s) continue;
    const from = points.at(-1) ?? { distance: 0, speed: speedAt(trace, index, start_s) };
    if (points.length === 0) points.push(from);
    points.push({ distance: from.distance + ((next - time) * (from.speed + speed)) / 2, speed });
    time = next;
  }
  return points;
}

/** The speed at the start, between the samples around it. */
function speedAt({ time_s, speed_m_s }: TracedStop['trace'], after: number, start: number): number {
  const [to, toTime] = [speed_m_s[after] ?? 0, time_s[after] ?? start];
  const [from, fromTime] = [speed_m_s[after - 1] ?? to, time_s[after - 1] ?? start];
  if (!Number.isFinite(from) || toTime <= fromTime) return to;
  return from + ((start - fromTime) / (toTime - fromTime)) * (to - from);
}
