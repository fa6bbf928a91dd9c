import { stroke } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import type { RoadScale } from './road-scale.ts';

/** Where something lies past the end of the scale: an arrow with its figure. */
export function offScale(label: string, road: RoadScale, y: number): readonly string[] {
  const x = road.right;
  return [
    stroke(`M${x - 24} ${y}H${x}M${x - 7} ${y - 5}L${x} ${y}L${x - 7} ${y + 5}`, { width: 1.5 }),
    words(label, [x - 30, y + 4], { anchor: 'end' }),
  ];
}
