import { signedRange, speaker, type Reconciliation } from '@standstill/workshop';
import { ink } from '../look/ink.ts';
import type { PictureLook } from '../look/picture-look.ts';
import { intervalMark } from '../road/interval-mark.ts';
import { mark } from '../road/mark-shape.ts';
import { roadRuler, rulerDepth } from '../road/road-ruler.ts';
import { roadScale, type RoadScale } from '../road/road-scale.ts';
import { spanMark, type Span } from '../road/span-mark.ts';
import type { Block } from '../sheet/block.ts';
import { paragraph } from '../sheet/paragraph.ts';
import { sheet } from '../sheet/sheet.ts';
import { straight } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import { expectationRows, placeBefore, type ExpectationRow } from './expectation-rows.ts';

/**
 * Draws where the stops after a change end on one road: by the job alone, by the job once it has learned from the stops
 * before, and as measured; and what stays unexplained between the last two.
 *
 * @param result - the model held against the measured stops, m and m/s
 * @param look - units of the figures
 * @returns an SVG document
 */
export function expectationPicture(result: Reconciliation, look: PictureLook): string {
  const say = speaker(look.units);
  const rows = expectationRows(result, say);
  const places = rows.flatMap(({ place }) => [place.low, place.high]);
  const reach = Math.max(...places, 0);
  const road = roadScale(
    { from: Math.min(0, ...places), reach: reach + 0.06 * Math.max(reach, 1) },
    look.units,
  );
  const rest = unexplained(result, look);
  const base = placeBefore(result);
  const caption =
    result.change === null
      ? `Stops from ${say.plain(result.nominalSpeed_m_s, 'speed')}. Brackets: 95 % intervals.`
      : `Stops from ${say.plain(result.nominalSpeed_m_s, 'speed')}. ${base === null ? 'Zero is where the car stopped before.' : 'The changes are laid onto the mean before; their brackets are the 95 % intervals of the change.'}`;
  const description = [
    result.sentence,
    ...rows.map(({ title, figure }) => `${title}: ${figure}.`),
    ...(rest === null ? [] : [`${rest.label}.`]),
    caption,
    ...result.beyondTheBrakes,
  ].join(' ');
  return sheet({ title: 'Expected and measured', description }, [
    paragraph(result.sentence, { size: 17, bold: true, after: 14 }),
    ...rows.map((row) => rowBlock(row, road)),
    footBlock(rest, road),
    paragraph(caption, { soft: true, size: 12, after: 4 }),
    ...result.beyondTheBrakes.map((text) => paragraph(text, { size: 12, after: 2 })),
  ]);
}

/** From where the learned expectation puts the stop to where it was measured. */
function unexplained(result: Reconciliation, { units }: PictureLook): Span | null {
  const { change } = result;
  if (change === null || change.measured_m === null || change.unexplained_m === null) return null;
  const base = placeBefore(result)?.value ?? 0;
  return {
    from: base + change.expected_m.value,
    to: base + change.measured_m.value,
    label: `Not explained by the brakes: ${signedRange(change.unexplained_m, 'stopping-distance', speaker(units))}`,
  };
}

function rowBlock({ title, figure, place, look }: ExpectationRow, road: RoadScale): Block {
  return {
    height: 52,
    draw: (top) => [
      words(`${title}: ${figure}`, [road.left, top + 12], { bold: true }),
      straight([road.left, top + 30], [road.right, top + 30], { color: ink.faint }),
      ...intervalMark(place, road, { y: top + 30, dashed: look.shape !== 'dot' }),
      mark(look, [road.x(place.value), top + 30]),
    ],
  };
}

function footBlock(rest: Span | null, road: RoadScale): Block {
  const above = rest === null ? 4 : 34;
  return {
    height: above + rulerDepth + 14,
    draw: (top) => [
      ...(rest === null ? [] : spanMark(rest, road, top + 10)),
      ...roadRuler(road, top + above),
    ],
  };
}
