import type { UnitSystem } from '@standstill/units';
import type { Job } from '../job/job.ts';
import type { Estimate } from '../results/estimate.ts';
import type { MeasureNext } from '../results/limits-report.ts';
import { trifles } from '../predict/trifles.ts';
import { lowered } from '../words/lowered.ts';
import { percent } from '../words/percent.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';
import { knownOwner } from './known-owner.ts';
import { measuredSpread } from './measured-spread.ts';
import { narrowedSpreads } from './narrowed-spreads.ts';
import type { Sensitivity } from './sensitivity.ts';

export interface MeasureNextInput {
  readonly job: Job;
  readonly found: Sensitivity;
  /** For each answer of the model its interval, m: distances, then differences from the first. */
  readonly intervals: readonly Estimate[];
  readonly seed: number;
  readonly units: UnitSystem;
}

/** How many measurements are named for one answer. */
const most = 5;
/** Share of the width of the interval that a measurement must take off to be worth an hour of the workshop (assumed). */
const leastShare = 0.1;
/** Share of the variance that a number must take part in to be tried at all. */
const leastTotal = 0.01;

/**
 * Answers what to measure next: for each answer the measurements that would narrow its interval, the best first.
 *
 * Equation: an end of the interval moves towards its middle by the share that the answer's spread loses
 * (`narrowedSpreads`), the number as well known as after `measuredSpread`
 * Assumes: the measurement comes out at what is taken now.
 *
 * @param input - the job, where the spread comes from, the intervals, seed, units of the sentences
 * @returns one list an answer
 */
export function measureNext(input: MeasureNextInput): readonly (readonly MeasureNext[])[] {
  const { found, intervals, seed } = input;
  const { knowns, model, single } = found;
  const surer = knowns.slice(0, single).flatMap((known, index) => {
    const measured = measuredSpread(known);
    const total = Math.max(...found.outputs.map(({ indices }) => indices[index]?.total ?? 0));
    return measured === null || total < leastTotal ? [] : [{ index, ...measured }];
  });
  const kept = narrowedSpreads({ model, knowns, surer, seed });
  return intervals.map((interval, output) =>
    surer
      .map(({ index, again }, k) => ({ index, again, removed: 1 - (kept[k]?.[output] ?? NaN) }))
      .filter(({ removed }) => removed >= leastShare && !isTrifle(interval))
      .toSorted((a, b) => b.removed - a.removed)
      .slice(0, most)
      .map(({ index, again, removed }) => advice(input, output, index, { interval, removed, again })),
  );
}

/** A difference that nobody feels is not worth measuring better. */
function isTrifle({ low, high }: Estimate): boolean {
  return Math.max(Math.abs(low), Math.abs(high)) < trifles.distance;
}

interface Gain {
  readonly interval: Estimate;
  /** Share of its width. */
  readonly removed: number;
  readonly again: boolean;
}

function advice(
  { job, found, units }: MeasureNextInput,
  output: number,
  index: number,
  { interval, removed, again }: Gain,
): MeasureNext {
  const known = found.knowns[index]!;
  const sensitivity = found.outputs[output]?.indices[index];
  const { value, low, high } = interval;
  const then = {
    value,
    low: value - (1 - removed) * (value - low),
    high: value + (1 - removed) * (high - value),
  };
  const owner = knownOwner(job, known.path);
  const isDifference = output >= Math.ceil(found.model.outputs / 2);
  const say = speaker(units);
  const words = ({ low: from, high: to }: Estimate): string =>
    isDifference
      ? signedRange({ low: from, high: to }, 'stopping-distance', say)
      : say.range(from, to, 'stopping-distance');
  const [before, after] = [words(interval), words(then)];
  const gain =
    before === after
      ? `it would take ${percent(removed)} off ${before}`
      : `it would narrow ${before} down to ${after}`;
  const what = lowered(known.fact.title.replace(/ \(.*\)$/u, ''));
  const how = again ? ' again and take the mean' : '';
  const sentence = `Measure the ${what} of ${owner.words}${how}: ${gain}.`;
  return {
    path: known.path,
    title: known.fact.title,
    of: owner.title,
    origin: known.origin,
    again,
    first: estimateOf(sensitivity?.first, sensitivity?.firstInterval),
    total: estimateOf(sensitivity?.total, sensitivity?.totalInterval),
    intervalRemovedShare: removed,
    now_m: interval,
    then_m: then,
    sentence,
  };
}

function estimateOf(value = 0, interval = { low: value, high: value }): Estimate {
  return { value, low: Math.min(value, interval.low), high: Math.max(value, interval.high) };
}
