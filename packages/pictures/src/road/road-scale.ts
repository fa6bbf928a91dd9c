import { preferredUnit, quantityKinds, toUnit, type UnitSystem } from '@standstill/units';
import { scaleLinear } from 'd3-scale';
import { sheetEdges } from '../sheet/sheet-size.ts';

/** The one scale of distance of a sheet: a foot is as long on each of its pictures. */
export interface RoadScale {
  /** px across the sheet, of m along the road. */
  readonly x: (distance: number) => number;
  /** Round distances for the ruler: m, and how they read. */
  readonly ticks: readonly { readonly distance: number; readonly label: string }[];
  /** m, the two ends of the scale. */
  readonly from: number;
  readonly reach: number;
  /** px, the two ends of the line. */
  readonly left: number;
  readonly right: number;
}

export interface RoadEnds {
  /** m; 0 where absent. */
  readonly from?: number;
  /** m, the farthest that is drawn. */
  readonly reach: number;
  /** px; the edges of the sheet where absent. */
  readonly left?: number;
  readonly right?: number;
}

/** px that a tick with its figure needs. */
const tickRoom = 66;

/** Lays the road of a sheet out, from where the stop begins to the farthest distance that is drawn. */
export function roadScale(ends: RoadEnds, units: UnitSystem): RoadScale {
  const { from = 0, left = sheetEdges.left, right = sheetEdges.right } = ends;
  const reach = Math.max(ends.reach, from + 1);
  const unit = preferredUnit('stopping-distance', { system: units });
  const { dimension } = quantityKinds['stopping-distance'];
  const inUnits = (distance: number): number => toUnit(distance, unit, dimension);
  const one = inUnits(1);
  const marks = scaleLinear([inUnits(from), inUnits(reach)], [0, 1]).ticks(
    Math.floor((right - left) / tickRoom),
  );
  const ticks = marks.map((mark, index) => ({
    distance: mark / one,
    label: index === marks.length - 1 ? `${mark} ${unit}` : String(mark),
  }));
  return { x: scaleLinear([from, reach], [left, right]), ticks, from, reach, left, right };
}
