import {
  signedRange,
  speaker,
  type FadeReport,
  type FadeSetResult,
  type Speaker,
} from '@standstill/workshop';
import { ink } from '../look/ink.ts';
import type { PictureLook } from '../look/picture-look.ts';
import { roadRuler, rulerDepth } from '../road/road-ruler.ts';
import { roadScale } from '../road/road-scale.ts';
import { keyBlock, type KeyEntry } from '../sets/key-block.ts';
import type { Block } from '../sheet/block.ts';
import { paragraph } from '../sheet/paragraph.ts';
import { sheet } from '../sheet/sheet.ts';
import { sheetEdges } from '../sheet/sheet-size.ts';
import { straight } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import { fadeLine } from './fade-line.ts';
import { fadeRoad } from './fade-road.ts';
import { temperatureLines, temperaturePanel, type TemperatureLine } from './temperature-lines.ts';

interface Drawn {
  readonly set: FadeSetResult;
  readonly filled: boolean;
}

/** px right of the left edge for the number of the stop. */
const numberRoom = 52;

/**
 * Draws stops in a row, one below the other on one road, with the line through them and its 95 % band, and the
 * temperatures at their starts beside them.
 *
 * @param report - one set or two; m and °C
 * @param look - units of the figures
 * @returns an SVG document
 */
export function fadePicture(report: FadeReport, look: PictureLook): string {
  const say = speaker(look.units);
  const { set, against } = report;
  const sets: readonly Drawn[] =
    against === null
      ? [{ set, filled: true }]
      : [
          { set, filled: false },
          { set: against, filled: true },
        ];
  const lines = temperatureLines(report);
  const told = [
    ...sets.map((each) => setWords(each.set, say)),
    ...(report.expectation === null ? [] : [report.expectation.sentence]),
  ];
  const caption = `Distances from ${say.plain(report.nominalSpeed_m_s, 'speed')}; the gray band: 95 % of the line.${lines.length === 0 ? '' : ' Temperatures at the start of each stop.'}`;
  const temperatureKey = lines.map(({ letter, title }) => `${letter ?? 'dotted'}: ${title}`).join('; ');
  const description = [report.sentence, ...told, caption, ...numberWords(sets, say)].join(' ');
  return sheet({ title: 'Stops in a row', description }, [
    paragraph(report.sentence, { size: 17, bold: true, after: 10 }),
    ...told.map((text) => paragraph(text, { after: 2 })),
    keyBlock(keyOf(sets)),
    rowsBlock(sets, lines, look),
    paragraph(caption, { soft: true, size: 12, after: 2 }),
    paragraph(temperatureKey, { soft: true, size: 12 }),
    ...leftOut(sets).map((text) => paragraph(text, { size: 12, after: 2 })),
  ]);
}

function rowsBlock(sets: readonly Drawn[], lines: readonly TemperatureLine[], { units }: PictureLook): Block {
  const stops = sets.flatMap(({ set }) => set.stops);
  const last = Math.max(1, ...stops.map(({ number }) => number));
  const row = Math.max(10, Math.min(24, 600 / last));
  const counted = stops.filter((stop) => stop.counted);
  const ends = sets.flatMap(({ set }) => {
    const fitted = fadeLine(set);
    return fitted === null ? [] : [fitted.at(fitted.last).high, fitted.at(fitted.first).high];
  });
  const reach =
    1.06 * Math.max(1, ...(counted.length > 0 ? counted : stops).map((stop) => stop.distance_m), ...ends);
  const { left, right } = sheetEdges;
  const panel = lines.length === 0 ? 0 : 230;
  const road = roadScale({ reach, left: left + numberRoom, right: right - panel }, units);
  const foot = row * last + (lines.length === 0 ? 16 : 26);
  return {
    height: foot + rulerDepth + 14,
    draw: (top) => {
      const y = (number: number): number => top + row * (number - 0.5) + 4;
      const roads = sets.map(({ set, filled }) => fadeRoad(set, road, y, filled));
      const place = { left: right - panel + 28, right, foot: top + foot };
      return [
        ...roads.flatMap(({ under }) => under),
        ...rowLabels(last, row, [left, panel === 0 ? right : place.right], y),
        ...roads.flatMap(({ over }) => over),
        ...roadRuler(road, top + foot),
        ...(panel === 0 ? [] : temperaturePanel(lines, y, place, units)),
      ];
    },
  };
}

/** The number of every stop, or of every fifth where there are many. */
function rowLabels(
  last: number,
  row: number,
  [left, right]: readonly [number, number],
  y: (number: number) => number,
): readonly string[] {
  const step = row < 14 ? 5 : 1;
  const numbers = Array.from({ length: last }, (_, index) => index + 1);
  return numbers.flatMap((number) =>
    number === 1 || number % step === 0
      ? [
          words(number === 1 ? 'stop 1' : String(number), [left + numberRoom - 10, y(number) + 4], {
            anchor: 'end',
            soft: true,
            size: 12,
          }),
          straight([left + numberRoom, y(number)], [right, y(number)], { color: ink.faint, width: 0.5 }),
        ]
      : [],
  );
}

function setWords(
  { name, slope_m_per_stop: slope, growth_m: growth, bends }: FadeSetResult,
  say: Speaker,
): string {
  if (slope === null) return `${name}: too few stops for a line.`;
  const whole =
    growth === null ? '' : `; over the whole row ${signedRange(growth, 'stopping-distance', say)}`;
  const bent = bends ? ' A straight line is not enough for it.' : '';
  return `${name}: each stop ${signedRange(slope, 'stopping-distance', say)} than the one before${whole}.${bent}`;
}

/** Every stop in words, for those who do not see the picture. */
function numberWords(sets: readonly Drawn[], say: Speaker): readonly string[] {
  return sets.flatMap(({ set }) =>
    set.stops.map(
      ({ number, distance_m: value, distanceStandardError_m: error, temperatures, counted, reason }) => {
        const half = 1.96 * error;
        const distance = say.central({ value, low: value - half, high: value + half }, 'stopping-distance');
        const hot = temperatures.map(
          ({ channel, start_C }) => `${channel} ${say.plain(start_C, 'temperature')}`,
        );
        const why = counted ? '' : ` (left out: ${reason ?? 'no reason given'})`;
        return `${set.name}, stop ${number}: ${[distance, ...hot].join(', ')}${why}.`;
      },
    ),
  );
}

function leftOut(sets: readonly Drawn[]): readonly string[] {
  return sets.flatMap(({ set }) =>
    set.stops
      .filter(({ counted }) => !counted)
      .map(
        ({ number, log, reason }) =>
          `${set.name}, stop ${number} (${log}): left out, ${(reason ?? '').replace(/\.$/u, '')}.`,
      ),
  );
}

function keyOf(sets: readonly Drawn[]): readonly KeyEntry[] {
  return sets.flatMap(({ set, filled }): KeyEntry[] => [
    { look: { shape: 'dot', filled }, text: `a stop of ${set.name}` },
    ...(set.stops.every(({ counted }) => counted)
      ? []
      : [{ look: { shape: 'cross' as const, filled }, text: `a stop of ${set.name}, left out` }]),
  ]);
}
