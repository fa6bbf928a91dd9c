import { preferredUnit, toUnit } from '@standstill/units';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { chartAxis } from './chart-axis.ts';
import { ink } from '../look/ink.ts';
import type { PictureLook } from '../look/picture-look.ts';
import { mark } from '../road/mark-shape.ts';
import { straight, stroke } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import { courseBetween, type CoursePoint } from './stop-course.ts';
import type { DevelopedPart } from './developed-part.ts';
import type { StopScales } from './stop-scales.ts';

/** Half-width of a 95 % interval over the standard error. */
const reach = 1.96;

/** Speed over time with its band, and the two speeds between which a deceleration is fully developed. */
export function speedChart(
  course: readonly CoursePoint[],
  part: DevelopedPart,
  scales: StopScales,
  place: { readonly top: number; readonly bottom: number },
  { units }: PictureLook,
): readonly string[] {
  const unit = preferredUnit('speed', { system: units });
  const y = scaleLinear([0, scales.fastest], [place.bottom, place.top]);
  const x = scales.time;
  const [first = 0, last = 0] = x.domain();
  const shown = courseBetween(course, [first, last]);
  const band = area<CoursePoint>(
    ({ time }) => x(time),
    ({ speed, speedError }) => y(Math.max(0, speed - reach * speedError)),
    ({ speed, speedError }) => y(Math.min(scales.fastest, speed + reach * speedError)),
  )(shown);
  const path = line<CoursePoint>(
    ({ time }) => x(time),
    ({ speed }) => y(speed),
  )(shown);
  const figures = (value: number): number => toUnit(value, unit, 'speed');
  return [
    ...chartAxis({ title: `speed, ${unit}`, of: y, figures, count: 4 }, [
      x.range()[0] ?? 0,
      x.range()[1] ?? 0,
    ]),
    stroke(band ?? '', { fill: ink.band, color: ink.band, width: 0.5 }),
    stroke(path ?? '', { width: 2, color: ink.accent }),
    ...[part.from, part.to].flatMap((point, index) =>
      point === null ? [] : speedMark(point, index, { x, y, last }),
    ),
  ];
}

function speedMark(
  point: CoursePoint,
  index: number,
  { x, y, last }: { readonly x: StopScales['time']; readonly y: StopScales['time']; readonly last: number },
): readonly string[] {
  if (point.time > last) return [];
  const at = [x(point.time), y(point.speed)] as const;
  return [
    straight([x(0), at[1]], at, { color: ink.line, dashes: '2 3' }),
    mark({ shape: 'dot', filled: false }, at),
    words(index === 0 ? '0.8 v₀' : '0.1 v₀', [at[0] + 9, at[1] - 6]),
  ];
}
