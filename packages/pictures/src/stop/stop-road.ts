import type { Speaker, StopResult } from '@standstill/workshop';
import { estimateWords, withStandardError } from '../look/estimate-words.ts';
import { intervalMark } from '../road/interval-mark.ts';
import { mark } from '../road/mark-shape.ts';
import { offScale } from '../road/off-scale.ts';
import { roadRuler } from '../road/road-ruler.ts';
import type { RoadScale } from '../road/road-scale.ts';
import { widthOf } from '../sheet/break-words.ts';
import { stroke } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import type { DevelopedPart } from './developed-part.ts';

/** The stop along the road: where the brake came on, where 0.8 and 0.1 of the speed were left, where it ended. */
export function stopRoad(
  stop: StopResult,
  part: DevelopedPart,
  road: RoadScale,
  y: number,
  say: Speaker,
): readonly string[] {
  const rest = withStandardError(stop.applicationDistance_m, stop.distanceStandardError_m);
  const label = estimateWords(rest, 'stopping-distance', say);
  const above = y - 22;
  const passed = [
    { point: part.from, text: '0.8 v₀' },
    { point: part.to, text: '0.1 v₀' },
  ].flatMap(({ point, text }) =>
    point === null || point.distance > road.reach ? [] : [{ x: road.x(point.distance), text }],
  );
  return [
    ...roadRuler(road, y),
    stroke(`M${road.x(0).toFixed(2)} ${y - 2}v-14l9 5l-9 5`, { width: 1.5, fill: 'none' }),
    ...passed.map(({ x }) => mark({ shape: 'dot', filled: false }, [x, y])),
    ...passed.map(({ x, text }, index) =>
      words(text, [index === 0 ? x : x - 8, y - 10], {
        anchor: index === 0 ? 'middle' : 'end',
        soft: true,
        size: 12,
      }),
    ),
    ...(rest.value > road.reach
      ? offScale(`off the scale: ${label}`, road, above)
      : [
          ...intervalMark(rest, road, { y }),
          words(label, [placeOf(road.x(rest.value), label, road), above - 4], { bold: true }),
        ]),
  ];
}

/** Left edge of a label that would stand over a place, kept on the sheet. */
function placeOf(x: number, label: string, { left, right }: RoadScale): number {
  const width = widthOf(label, 13);
  return Math.max(left, Math.min(x - width / 2, right - width));
}
