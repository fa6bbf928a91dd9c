import { orNone } from '../draws/or-none.ts';
import { drawSheet } from '../draws/draw-sheet.ts';
import { intervalOf } from '../draws/interval-of.ts';
import type { Job, JobSetUp } from '../job/job.ts';
import type { Known } from '../job/known.ts';
import type { Estimate } from '../results/estimate.ts';
import { central } from '../settle/draw.ts';
import type { Draw } from '../settle/draw.ts';
import { settlePedal } from './pedal-question.ts';
import { pedalFigures } from './pedal-figures.ts';
import type { PedalFigures } from './pedal-figures.ts';

export interface PedalSampleInput {
  readonly job: Job;
  readonly setUp: JobSetUp;
  /** N; the job's where absent. */
  readonly pedalForce: number | undefined;
  /** m/s². */
  readonly wanted: number;
  readonly draws: number;
  readonly seed: number;
}

/** The figures of one pedal over the draws. */
export interface PedalSample {
  readonly central: PedalFigures;
  /** Draws outside what the formulas are valid for. */
  readonly leftOut: number;
  /** Value with its interval. */
  readonly estimate: (name: string) => Estimate;
  /** The same; null where the central value is none. */
  readonly maybe: (name: string) => Estimate | null;
  /** Share of the draws with the flag, 0 to 1. */
  readonly share: (name: string) => number;
  readonly draws: readonly Draw[];
}

/** Answers every figure of one pedal with its spread. */
export function pedalSample(input: PedalSampleInput): PedalSample {
  const { job, setUp, pedalForce, wanted, draws, seed } = input;
  const of = (draw: Draw): PedalFigures => pedalFigures(settlePedal(job, setUp, draw, pedalForce), wanted);
  const middle = of(central);
  const names = Object.keys(middle);
  const columns = new Map(names.map((name) => [name, new Float64Array(draws).fill(NaN)]));
  let leftOut = 0;
  const sheet = drawSheet({ knowns: pedalKnowns(job, setUp), draws, seed });
  sheet.forEach((draw, row) => {
    const figures = orNone(() => of(draw));
    if (figures === null) leftOut += 1;
    for (const [name, column] of columns) column[row] = figures?.[name] ?? NaN;
  });
  const column = (name: string): Float64Array => columns.get(name) ?? new Float64Array(0);
  const estimate = (name: string): Estimate => intervalOf(middle[name] ?? NaN, column(name));
  return {
    central: middle,
    leftOut,
    estimate,
    maybe: (name) => (Number.isFinite(middle[name] ?? NaN) ? estimate(name) : null),
    share: (name) => meanOf(column(name)),
    draws: sheet,
  };
}

/** Every number that the pedal uses and that is not known exactly, each once. */
export function pedalKnowns(job: Job, setUp: JobSetUp): readonly Known[] {
  const found = new Map<string, Known>();
  settlePedal(
    job,
    setUp,
    (known) => {
      if (known.spread > 0) found.set(known.path, known);
      return known.value;
    },
    undefined,
  );
  return [...found.values()];
}

function meanOf(flags: Float64Array): number {
  const there = flags.filter((flag) => Number.isFinite(flag));
  return there.length === 0 ? 0 : there.reduce((sum, flag) => sum + flag, 0) / there.length;
}
