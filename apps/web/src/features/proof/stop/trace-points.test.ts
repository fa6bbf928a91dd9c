import { describe, expect, it } from 'vitest';
import { tracePoints } from './trace-points.ts';

describe('tracePoints', () => {
  it('a steady deceleration from the start covers v²/(2a)', () => {
    const time_s = Array.from({ length: 41 }, (_, index) => index * 0.1 - 1);
    const speed_m_s = time_s.map((time) => (time < 0 ? 27 : 27 - 9 * time));
    const points = tracePoints({ start_s: 0, trace: { time_s, speed_m_s } });
    expect(points[0]).toEqual({ distance: 0, speed: 27 });
    expect(points.at(-1)?.speed).toBeCloseTo(0, 9);
    expect(points.at(-1)?.distance).toBeCloseTo((27 * 27) / 18, 9);
  });

  it('begins between two samples where the stop does', () => {
    const points = tracePoints({ start_s: 0.5, trace: { time_s: [0, 1, 2], speed_m_s: [10, 8, 0] } });
    expect(points[0]).toEqual({ distance: 0, speed: 9 });
    expect(points[1]?.distance).toBeCloseTo(0.5 * 8.5, 12);
    expect(points.at(-1)?.distance).toBeCloseTo(0.5 * 8.5 + 4, 12);
  });

  it('gaps are left out, not drawn as zero', () => {
    const points = tracePoints({ start_s: 0, trace: { time_s: [0, 1, 2], speed_m_s: [10, NaN, 0] } });
    expect(points.every(({ speed }) => Number.isFinite(speed))).toBe(true);
    expect(points.at(-1)?.distance).toBeCloseTo(10, 12);
  });

  it('a trace without samples has no points', () => {
    expect(tracePoints({ start_s: 0, trace: { time_s: [], speed_m_s: [] } })).toEqual([]);
  });
});
