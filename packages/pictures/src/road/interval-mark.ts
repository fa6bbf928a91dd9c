import type { Estimate } from '@standstill/workshop';
import { ink } from '../look/ink.ts';
import { straight, stroke } from '../svg/stroke.ts';
import type { RoadScale } from './road-scale.ts';

/** A value with its interval on the road: a bracket from low to high, a tall tick at the value. */
export function intervalMark(
  { value, low, high }: Estimate,
  road: RoadScale,
  { y, dashed = false }: { readonly y: number; readonly dashed?: boolean },
): readonly string[] {
  const [left, right] = [road.x(Math.max(low, road.from)), road.x(Math.min(high, road.reach))];
  const ends = [...(low < road.from ? [] : [left]), ...(high > road.reach ? [] : [right])];
  return [
    straight([left, y], [right, y], { width: 2, ...(dashed ? { dashes: '5 3' } : {}) }),
    ...ends.map((x) => stroke(`M${x.toFixed(2)} ${y - 6}v12`, { width: 2 })),
    ...(value < road.from || value > road.reach
      ? []
      : [straight([road.x(value), y - 10], [road.x(value), y + 10], { width: 2, color: ink.strong })]),
  ];
}
