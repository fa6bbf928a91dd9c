import { ink } from '../look/ink.ts';
import { straight } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import type { RoadScale } from './road-scale.ts';

/** px that a ruler takes below its line. */
export const rulerDepth = 24;

/** The road: a strong line with round distances below it. */
export function roadRuler(road: RoadScale, y: number): readonly string[] {
  return [
    straight([road.left, y], [road.right, y], { width: 3, color: ink.soft }),
    ...road.ticks.flatMap(({ distance, label }) => [
      straight([road.x(distance), y], [road.x(distance), y + 7]),
      words(label, [road.x(distance), y + 21], { anchor: anchorOf(road, distance), soft: true, size: 12 }),
    ]),
  ];
}

/** A figure at the end of the line stays on the sheet. */
function anchorOf(road: RoadScale, distance: number): 'start' | 'middle' | 'end' {
  const x = road.x(distance);
  if (x - road.left < 8) return 'start';
  return road.right - x < 16 ? 'end' : 'middle';
}
