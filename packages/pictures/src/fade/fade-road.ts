import type { FadeSetResult } from '@standstill/workshop';
import { area, line } from 'd3-shape';
import { ink } from '../look/ink.ts';
import { mark, markRadius } from '../road/mark-shape.ts';
import type { RoadScale } from '../road/road-scale.ts';
import { stroke } from '../svg/stroke.ts';
import { fadeLine } from './fade-line.ts';

/** Every stop of a set where the car came to rest, one below the other, with the line through them and its band. */
export function fadeRoad(
  set: FadeSetResult,
  road: RoadScale,
  y: (number: number) => number,
  filled: boolean,
): { readonly under: readonly string[]; readonly over: readonly string[] } {
  const fitted = fadeLine(set);
  const numbers =
    fitted === null
      ? []
      : Array.from({ length: 25 }, (_, index) => fitted.first + ((fitted.last - fitted.first) * index) / 24);
  const points = numbers.map((number) => ({
    y: y(number),
    ...(fitted?.at(number) ?? { value: 0, low: 0, high: 0 }),
  }));
  const within = (distance: number): number => road.x(Math.min(Math.max(distance, road.from), road.reach));
  const band = area<(typeof points)[number]>()
    .y((point) => point.y)
    .x0((point) => within(point.low))
    .x1((point) => within(point.high))(points);
  const path = line<(typeof points)[number]>(
    (point) => within(point.value),
    (point) => point.y,
  )(points);
  const dashes = filled ? {} : { dashes: '6 4' };
  return {
    under: band === null ? [] : [stroke(band, { fill: ink.band, color: ink.line, width: 0.75, ...dashes })],
    over: [
      ...(path === null
        ? []
        : [stroke(path, { width: 2, color: filled ? ink.accent : ink.strong, ...dashes })]),
      ...set.stops.map(({ number, distance_m, counted }) =>
        distance_m > road.reach
          ? farMark(road.right, y(number))
          : mark({ shape: counted ? 'dot' : 'cross', filled }, [road.x(distance_m), y(number)]),
      ),
    ],
  };
}

/** A stop that ends past the scale. */
function farMark(x: number, y: number): string {
  return stroke(
    `M${x - 18} ${y}H${x}M${x - markRadius} ${y - markRadius}L${x} ${y}L${x - markRadius} ${y + markRadius}`,
  );
}
