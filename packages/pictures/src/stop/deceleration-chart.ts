import { preferredUnit, toUnit } from '@standstill/units';
import type { Speaker, StopResult } from '@standstill/workshop';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { ink } from '../look/ink.ts';
import type { PictureLook } from '../look/picture-look.ts';
import { straight, stroke } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import { chartAxis } from './chart-axis.ts';
import type { DevelopedPart } from './developed-part.ts';
import { courseBetween, type CoursePoint } from './stop-course.ts';
import type { StopScales } from './stop-scales.ts';

interface Place {
  readonly top: number;
  readonly bottom: number;
}

/** Deceleration over time, and its mean where it is fully developed. */
export function decelerationChart(
  stop: StopResult,
  { course, part }: { readonly course: readonly CoursePoint[]; readonly part: DevelopedPart },
  scales: StopScales,
  place: Place,
  { units, say }: PictureLook & { readonly say: Speaker },
): readonly string[] {
  const unit = preferredUnit('deceleration', { system: units });
  const y = scaleLinear([0, scales.hardest], [place.bottom, place.top]).clamp(true);
  const x = scales.time;
  const [first = 0, last = 0] = x.domain();
  const path = line<CoursePoint>(
    ({ time }) => x(time),
    ({ deceleration }) => y(deceleration),
  ).defined(({ deceleration }) => Number.isFinite(deceleration))(courseBetween(course, [first, last]));
  return [
    ...chartAxis(
      {
        title: `deceleration, ${unit}`,
        of: y,
        figures: (value) => toUnit(value, unit, 'acceleration'),
        count: 3,
      },
      [x.range()[0] ?? 0, x.range()[1] ?? 0],
    ),
    stroke(path ?? '', { width: 1.5, color: ink.soft }),
    ...developedMean(stop, part, { x, y, last, say }),
  ];
}

function developedMean(
  { meanFullyDevelopedDeceleration_m_s2: mean }: StopResult,
  { from, to }: DevelopedPart,
  at: {
    readonly x: StopScales['time'];
    readonly y: StopScales['time'];
    readonly last: number;
    readonly say: Speaker;
  },
): readonly string[] {
  if (mean === null || from === null || to === null || to.time > at.last) return [];
  const [left, right, level] = [at.x(from.time), at.x(to.time), at.y(mean)];
  const figure = at.say.central({ value: mean, low: mean - 0.05, high: mean + 0.05 }, 'deceleration');
  return [
    straight([left, level], [right, level], { width: 2.5, dashes: '7 3' }),
    words(`fully developed ${figure}`, [(left + right) / 2, at.y(0) - 7], { anchor: 'middle' }),
  ];
}
