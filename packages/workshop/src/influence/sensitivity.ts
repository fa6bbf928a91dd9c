import { sobolIndices } from '@standstill/numerics';
import type { InputGroup, OutputSensitivity } from '@standstill/numerics';
import { drawnValue } from '../draws/drawn-value.ts';
import { knownsOf } from '../draws/knowns-of.ts';
import type { Job } from '../job/job.ts';
import type { Known } from '../job/known.ts';
import type { Overrides } from '../settle/settle.ts';
import { distanceModel } from './distance-model.ts';
import type { DistanceModel } from './distance-model.ts';
import { knownOwner } from './known-owner.ts';
import { screenKnowns } from './screen-knowns.ts';

export interface SensitivityInput {
  readonly job: Job;
  readonly setUpIds: readonly string[];
  readonly overrides: Overrides;
  readonly seed: number;
  /** Rows of each sample; 256 where left out. */
  readonly rows?: number;
}

/** Where the spread of the set-ups' distances comes from. */
export interface Sensitivity {
  /** All uncertain numbers, the one that moves the answers most first. */
  readonly knowns: readonly Known[];
  readonly model: DistanceModel;
  /** How many of `knowns`, from the first, have an index of their own. */
  readonly single: number;
  /** Paths of the parts with an index of their own. */
  readonly parts: readonly string[];
  /** One entry an answer of the model. Indices: the single numbers, the rest of them together, then the parts. */
  readonly outputs: readonly OutputSensitivity[];
}

/** Numbers and parts that get an index of their own, and the weight that they need for it. */
const most = { single: 10, parts: 8 } as const;
const leastWeight = 0.001;

/**
 * Answers where the spread of the distances comes from, number by number and part by part.
 *
 * Equation: as `sobolIndices`; up to ten numbers that move the answers most by themselves (`screenKnowns`) stand alone, all
 * others are one group, whose total index says what the choice may have missed
 *
 * @param input - job, set-ups, overrides, seed, rows
 * @returns indices for each distance and each difference from the first
 */
export function sensitivity({ job, setUpIds, overrides, seed, rows = 256 }: SensitivityInput): Sensitivity {
  const found = knownsOf(job, setUpIds);
  const swings = screenKnowns(distanceModel({ job, setUpIds, knowns: found, overrides }), found);
  const weights = weightsOf(swings);
  const order = found.map((_, index) => index).sort((a, b) => weights[b]! - weights[a]!);
  const knowns = order.map((index) => found[index]!);
  const model = distanceModel({ job, setUpIds, knowns, overrides });
  const heavy = weights.filter((weight) => weight >= leastWeight).length;
  const single = Math.min(most.single, heavy);
  const parts = partsOf(
    job,
    knowns,
    order.map((index) => weights[index]!),
  );
  const outputs =
    knowns.length === 0
      ? []
      : sobolIndices({
          inputs: knowns.map(({ path }) => path),
          groups: [...singles(knowns, single), ...parts],
          toValue: (share, index) => drawnValue(knowns[index]!, share),
          evaluate: model.answer,
          outputs: model.outputs,
          draws: rows,
          seed,
          redraws: 200,
        });
  return { knowns, model, single, parts: parts.map(({ name }) => name), outputs };
}

/** Share of the summed squared swings, of the answer for which it is largest. */
function weightsOf(swings: readonly Float64Array[]): readonly number[] {
  const sums = new Float64Array(swings[0]?.length ?? 0);
  for (const swing of swings) swing.forEach((each, k) => (sums[k] = sums[k]! + each * each));
  return swings.map((swing) =>
    Math.max(...swing.map((each, k) => (sums[k]! > 0 ? (each * each) / sums[k]! : 0))),
  );
}

function singles(knowns: readonly Known[], count: number): InputGroup[] {
  const alone = knowns.slice(0, count).map(({ path }, index) => ({ name: path, members: [index] }));
  const rest = knowns.slice(count).map((_, index) => count + index);
  return [...alone, { name: 'the rest', members: rest }];
}

/** The parts whose numbers weigh most together. */
function partsOf(job: Job, knowns: readonly Known[], weights: readonly number[]): InputGroup[] {
  const byOwner = new Map<string, { members: number[]; weight: number }>();
  knowns.forEach(({ path }, index) => {
    const owner = knownOwner(job, path).path;
    const group = byOwner.get(owner) ?? { members: [], weight: 0 };
    group.members.push(index);
    group.weight += weights[index]!;
    byOwner.set(owner, group);
  });
  return [...byOwner]
    .filter(([, { weight }]) => weight >= leastWeight)
    .toSorted(([, a], [, b]) => b.weight - a.weight)
    .slice(0, most.parts)
    .map(([name, { members }]) => ({ name, members }));
}
