import { ink } from '../look/ink.ts';
import { straight, stroke } from '../svg/stroke.ts';
import { widthOf } from '../sheet/break-words.ts';
import { words } from '../svg/words.ts';
import type { RoadScale } from './road-scale.ts';

export interface Span {
  /** m, where it begins and ends; the arrow points to the end. */
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** A distance between two places of the road, as a draftsman dimensions it; its label stands where there is room. */
export function spanMark({ from, to, label }: Span, road: RoadScale, y: number): readonly string[] {
  const [start, end] = [road.x(from), road.x(to)];
  const [left, right] = [Math.min(start, end), Math.max(start, end)];
  const tip = end < start ? 6 : -6;
  const arrow =
    right - left < 8
      ? []
      : [
          stroke(
            `M${(end + tip).toFixed(2)} ${y - 4}L${end.toFixed(2)} ${y}L${(end + tip).toFixed(2)} ${y + 4}`,
            { width: 1.5 },
          ),
        ];
  const before = left - 8 - widthOf(label, 13) >= road.left;
  return [
    straight([left, y], [right, y], { width: 1.5 }),
    straight([start, y - 7], [start, y + 7], { color: ink.line }),
    straight([end, y - 7], [end, y + 7], { color: ink.line }),
    ...arrow,
    words(label, [before ? left - 8 : right + 8, y + 4], { anchor: before ? 'end' : 'start', bold: true }),
  ];
}
