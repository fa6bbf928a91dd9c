import type { Comparison, Speaker } from '@standstill/workshop';
import { ink } from '../look/ink.ts';
import { estimateWords } from '../look/estimate-words.ts';
import { intervalMark } from '../road/interval-mark.ts';
import { mark, markRadius } from '../road/mark-shape.ts';
import { offScale } from '../road/off-scale.ts';
import type { RoadScale } from '../road/road-scale.ts';
import { stackMarks } from '../road/stack-marks.ts';
import type { Block } from '../sheet/block.ts';
import { straight } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';
import type { DrawnRun } from './set-runs.ts';

export interface DrawnSet {
  /** `Before` or `After`, with the name of the set. */
  readonly title: string;
  readonly set: Comparison['before'];
  readonly runs: readonly DrawnRun[];
  readonly filled: boolean;
}

const step = 2 * markRadius + 2;
const lineAt = 34;
const marksAt = lineAt + 22;

/** A set on the road: its mean with the interval, and every run below it where the car came to rest. */
export function setBlock({ title, set, runs, filled }: DrawnSet, road: RoadScale, say: Speaker): Block {
  const near = runs.filter(({ distance }) => distance <= road.reach);
  const far = runs.filter(({ distance }) => distance > road.reach);
  const places = stackMarks(
    near.map(({ distance }) => road.x(distance)),
    step,
  );
  const levels = Math.max(0, ...places.map(({ level }) => level)) + 1;
  return {
    height: marksAt + (levels + (far.length > 0 ? 1 : 0)) * step + 10,
    draw: (top) => [
      words(
        `${title}: mean ${estimateWords(set.mean_m, 'stopping-distance', say)}, ${runWords(set.count)}`,
        [road.left, top + 13],
        { bold: true },
      ),
      straight([road.left, top + lineAt], [road.right, top + lineAt], { color: ink.faint }),
      ...intervalMark(set.mean_m, road, { y: top + lineAt, dashed: !filled }),
      ...places.map(({ at, level }, index) =>
        mark({ shape: near[index]?.shape ?? 'dot', filled }, [at, top + marksAt + level * step]),
      ),
      ...(far.length === 0 ? [] : offScale(farWords(far, say), road, top + marksAt + levels * step)),
    ],
  };
}

function runWords(count: number): string {
  return count === 1 ? '1 run counts' : `${count} runs count`;
}

function farWords(far: readonly DrawnRun[], say: Speaker): string {
  const figures = far.map(({ distance }) => say.plain(distance, 'stopping-distance')).join(', ');
  return `off the scale: ${figures}${far.every(({ shape }) => shape.startsWith('cross')) ? ', left out' : ''}`;
}
