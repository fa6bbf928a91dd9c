import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { ink } from '../look/ink.ts';
import { straight } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';

export interface ChartAxis {
  /** With its unit. */
  readonly title: string;
  /** px down, of SI. */
  readonly of: ScaleLinear<number, number>;
  /** SI to the unit of print. */
  readonly figures: (value: number) => number;
  /** About how many round figures. */
  readonly count: number;
}

/** Round figures up the left side with faint lines across, and what they are above them. */
export function chartAxis(
  { title, of, figures, count }: ChartAxis,
  [left, right]: readonly [number, number],
): readonly string[] {
  const [low = 0, high = 1] = of.domain();
  const marks = scaleLinear([figures(low), figures(high)], [low, high]);
  const print = marks.tickFormat(count);
  return [
    ...marks.ticks(count).flatMap((figure) => {
      const y = of(marks(figure));
      return [
        straight([left, y], [right, y], { color: ink.faint }),
        words(print(figure), [left - 6, y + 4], { anchor: 'end', soft: true, size: 12 }),
      ];
    }),
    words(title, [left + 4, Math.min(...of.range()) - 5], { soft: true, size: 12 }),
  ];
}
