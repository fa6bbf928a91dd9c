import { requireRange } from '../refuse/require-range.ts';
import { sobolSequence } from '../sample/sobol-sequence.ts';
import type { Interval } from '../statistics/interval.ts';
import { bootstrapIndices } from './bootstrap-indices.ts';
import { estimateIndices } from './estimate-indices.ts';

/** Inputs that are counted together; groups may share inputs, and need not hold all of them. */
export interface InputGroup {
  readonly name: string;
  /** Places in the plan's inputs. */
  readonly members: readonly number[];
}

export interface SensitivityPlan {
  /**
   * A name for each uncertain input, no two alike: it and the seed decide the input's draws. The most important first
   * where that is known: they get the best dimensions of the sequence.
   */
  readonly inputs: readonly string[];
  /** Whose indices are asked for; each input by itself where left out. */
  readonly groups?: readonly InputGroup[];
  /** Turns a share from 0 to 1 into a value of an input, by place in `inputs`. The share itself where left out. */
  readonly toValue?: (share: number, input: number) => number;
  /** Fills `results`, one number an output, from the inputs' values; NaN where these values have no answer. */
  readonly evaluate: (values: Float64Array, results: Float64Array) => void;
  /** How many outputs there are. */
  readonly outputs: number;
  /** n, rows of each of the two samples; best a power of two. `evaluate` runs n × (groups + 2) times. */
  readonly draws: number;
  /** Any finite number. */
  readonly seed: number;
  /** How many times the rows are drawn anew for the intervals; 200 where left out. */
  readonly redraws?: number;
}

/** Share of the variance of one output that one group carries. */
export interface SobolIndex {
  /** Name of the group. */
  readonly group: string;
  /** S, carried by the group alone: what knowing it exactly would take off the variance, on average. */
  readonly first: number;
  readonly firstInterval: Interval;
  /** S_T, carried by the group alone or together with others: what would stay if only the group stayed unknown. */
  readonly total: number;
  readonly totalInterval: Interval;
}

export interface OutputSensitivity {
  /** Unit of the output. */
  readonly mean: number;
  /** Unit of the output, squared. */
  readonly variance: number;
  /** Rows that had an answer throughout. */
  readonly rows: number;
  /** In the order of the groups; empty where the output does not vary. */
  readonly indices: readonly SobolIndex[];
}

/** Answers f(A), f(B) and f(AB_g) of one output, row by row; rows without an answer are left out. */
export interface SensitivitySample {
  readonly fromA: Float64Array;
  readonly fromB: Float64Array;
  /** A with the columns of one group taken from B; one for each group. */
  readonly mixed: readonly Float64Array[];
}

/**
 * Answers which uncertain inputs an answer's uncertainty comes from: first-order and total Sobol indices, by group.
 *
 * Equation: S_g = ⟨f(B) (f(AB_g) − f(A))⟩ / V, S_Tg = ⟨(f(A) − f(AB_g))²⟩ / (2 V), f less its mean, V over A and B
 * Assumes: inputs independent of each other. Intervals are 95 %, from rows drawn anew; rows of a low-discrepancy sequence
 * are evener than that takes them for, so that the intervals are rather too wide.
 * Valid: estimates scatter; a first-order index near zero may come out slightly below it.
 *
 * @param plan - inputs with groups, the function, draws, seed
 * @returns one entry an output: mean, variance, and S and S_T of every group, 1
 * @throws OutOfRangeError where there are fewer than two draws, no input or no output
 * Source: [saltelli-2010], [jansen-1999]
 * @example
 * sobolIndices({ inputs: ['x'], evaluate: (values, results) => { results[0] = values[0]; }, outputs: 1, draws: 64, seed: 1 })[0].rows // => 64
 */
export function sobolIndices(plan: SensitivityPlan): readonly OutputSensitivity[] {
  const { inputs, outputs, draws, seed, redraws = 200 } = plan;
  requireRange('number of draws', draws, '', 2, 1e8);
  requireRange('number of inputs', inputs.length, '', 1, 1e5);
  requireRange('number of outputs', outputs, '', 1, 1e5);
  const groups = plan.groups ?? inputs.map((name, index) => ({ name, members: [index] }));
  return sampled(plan, groups).map((sample, output) => {
    const { mean, variance, first, total } = estimateIndices(sample);
    const rows = sample.fromA.length;
    if (!(variance > 0)) return { mean, variance, rows, indices: [] };
    const intervals = bootstrapIndices(sample, { seed: seed + output, redraws });
    const indices = groups.map(({ name }, index) => ({
      group: name,
      first: first[index]!,
      firstInterval: intervals[index]!.first,
      total: total[index]!,
      totalInterval: intervals[index]!.total,
    }));
    return { mean, variance, rows, indices };
  });
}

/** Runs the function over A, B and every AB_g. One scalar an output is kept of each run. */
function sampled(plan: SensitivityPlan, groups: readonly InputGroup[]): readonly SensitivitySample[] {
  const { inputs, outputs, draws, evaluate } = plan;
  const width = inputs.length;
  const members = groups.map((group) => new Set(group.members));
  const values = valuesOf(plan);
  const results = new Float64Array(outputs);
  const runs = groups.length + 2;
  const kept = Array.from({ length: outputs }, () => new Float64Array(draws * runs));
  const mixed = new Float64Array(width);
  for (let row = 0; row < draws; row += 1) {
    for (let run = 0; run < runs; run += 1) {
      for (let j = 0; j < width; j += 1) {
        const fromB = run === 1 || members[run - 2]?.has(j) === true ? 1 : 0;
        mixed[j] = values[(row * width + j) * 2 + fromB]!;
      }
      evaluate(mixed, results);
      kept.forEach((column, output) => (column[row * runs + run] = results[output]!));
    }
  }
  return kept.map((column) => withAnswers(column, draws, runs));
}

/** A's and B's values of every input side by side: row i, input j at (i d + j) 2. */
function valuesOf({ inputs, toValue, draws, seed }: SensitivityPlan): Float64Array {
  const keys = inputs.flatMap((input) => [`${input}/a`, `${input}/b`]);
  const shares = sobolSequence({ draws, keys, seed });
  if (toValue === undefined) return shares;
  return shares.map((share, index) => toValue(share, (index >> 1) % inputs.length));
}

function withAnswers(column: Float64Array, draws: number, runs: number): SensitivitySample {
  const rows = Array.from({ length: draws }, (_, row) => row).filter((row) =>
    column.subarray(row * runs, (row + 1) * runs).every((value) => Number.isFinite(value)),
  );
  const of = (run: number): Float64Array => Float64Array.from(rows, (row) => column[row * runs + run]!);
  return {
    fromA: of(0),
    fromB: of(1),
    mixed: Array.from({ length: runs - 2 }, (_, group) => of(group + 2)),
  };
}
