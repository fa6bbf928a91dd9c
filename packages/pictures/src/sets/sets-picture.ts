import { signedRange, speaker, type Comparison, type LogReport } from '@standstill/workshop';
import { estimateWords } from '../look/estimate-words.ts';
import type { PictureLook } from '../look/picture-look.ts';
import { roadRuler, rulerDepth } from '../road/road-ruler.ts';
import { roadScale, type RoadScale } from '../road/road-scale.ts';
import { spanMark } from '../road/span-mark.ts';
import type { Block } from '../sheet/block.ts';
import { paragraph } from '../sheet/paragraph.ts';
import { sheet } from '../sheet/sheet.ts';
import { keyBlock, type KeyEntry } from './key-block.ts';
import { leftOutWords } from './left-out-words.ts';
import { setBlock, type DrawnSet } from './set-block.ts';
import { setRuns } from './set-runs.ts';

/** The logs of both sets, for the distances of the runs that don't count. */
export interface ComparedReports {
  readonly before: readonly LogReport[];
  readonly after: readonly LogReport[];
}

const from = {
  application: 'from the first brake application to rest',
  gate: 'from crossing the nominal speed to rest',
} as const;

/**
 * Draws every run of two sets on one road to one scale: means with 95 % intervals, what was left out and what a person
 * judged by the shape of the mark, and the difference of the means.
 *
 * @param comparison - of the sets; m and m/s
 * @param reports - the logs of both sets; without them only what counts is drawn
 * @param look - units of the figures
 * @returns an SVG document
 */
export function setsPicture(comparison: Comparison, reports: ComparedReports, look: PictureLook): string {
  const say = speaker(look.units);
  const { before, after } = comparison;
  const sets: readonly DrawnSet[] = [
    {
      title: titled('Before', before.name),
      set: before,
      runs: setRuns(before, comparison, reports.before),
      filled: false,
    },
    {
      title: titled('After', after.name),
      set: after,
      runs: setRuns(after, comparison, reports.after),
      filled: true,
    },
  ];
  const reach = 1.06 * Math.max(...[before, after].map((set) => Math.max(set.worst_m, set.mean_m.high)));
  const road = roadScale({ reach }, look.units);
  const notes = [...leftOutWords('Before', before), ...leftOutWords('After', after)];
  const caption = `Distances ${from[comparison.definition]}, from ${say.plain(comparison.nominalSpeed_m_s, 'speed')}. Brackets: 95 % intervals of the means.${sharedWords(comparison)}`;
  const change = signedRange(comparison.difference_m, 'stopping-distance', say);
  const description = [
    comparison.sentence,
    ...sets.map(
      ({ title, set }) =>
        `${title}: ${set.count} runs, mean ${estimateWords(set.mean_m, 'stopping-distance', say)}.`,
    ),
    `Difference of the means: ${change}.`,
    ...(comparison.control === null ? [] : [comparison.control.sentence]),
    caption,
    ...notes,
  ].join(' ');
  return sheet({ title: 'Every run, before and after', description }, [
    paragraph(comparison.sentence, { size: 17, bold: true, after: 10 }),
    keyBlock(keyOf(sets)),
    ...sets.map((set) => setBlock(set, road, say)),
    differenceBlock(comparison, road, change),
    paragraph(caption, { soft: true, size: 12 }),
    ...(comparison.control === null ? [] : [paragraph(comparison.control.sentence, { size: 12, after: 2 })]),
    ...notes.map((note) => paragraph(note, { size: 12, after: 2 })),
  ]);
}

function titled(side: string, name: string): string {
  return name.toLowerCase().startsWith(side.toLowerCase())
    ? `${side}${name.slice(side.length)}`
    : `${side}, ${name}`;
}

function differenceBlock({ before, after, control }: Comparison, road: RoadScale, change: string): Block {
  const label = control === null ? `mean ${change}` : `these two means alone: ${change}`;
  return {
    height: 50 + rulerDepth + 8,
    draw: (top) => [
      ...spanMark({ from: before.mean_m.value, to: after.mean_m.value, label }, road, top + 16),
      ...roadRuler(road, top + 44),
    ],
  };
}

/** The means of one logger move together, so that their difference is surer than either. */
function sharedWords({ before, after, sameLogger }: Comparison): string {
  if (!(Math.max(before.sharedError_m, after.sharedError_m) > 0)) return '';
  return sameLogger
    ? ' They hold the unknown delay of the logger, which moves both alike and drops out of the difference.'
    : ' They hold the unknown delay of each logger, and so does the difference.';
}

const meanings = {
  dot: 'counts',
  square: 'restored by hand, counts',
  cross: 'left out',
  'crossed-square': 'rejected by hand',
  diamond: 'computed',
} as const;

function keyOf(sets: readonly DrawnSet[]): readonly KeyEntry[] {
  return sets.flatMap(({ runs, filled }) =>
    [...new Set(runs.map(({ shape }) => shape))].map((shape) => ({
      look: { shape, filled },
      text: `a run ${filled ? 'after' : 'before'}: ${meanings[shape]}`,
    })),
  );
}
