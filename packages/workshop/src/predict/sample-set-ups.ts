import { drawRange } from '../draws/draw-range.ts';
import type { DrawRequest } from '../draws/draw-request.ts';
import type { DrawnRange, DrawTroubles } from '../draws/drawn-range.ts';
import type { Job } from '../job/job.ts';
import { figureNames } from './figures.ts';
import type { FigureName } from './figures.ts';

/** Every figure of one set-up over the draws; row i of one set-up belongs to row i of every other. */
export type FigureDraws = Readonly<Record<FigureName, Float64Array>>;

export type { DrawTroubles };

export interface SampleInput extends Omit<DrawRequest, 'question'> {
  readonly job: Job;
}

export interface Sampled {
  /** In the order of the ids. */
  readonly bySetUp: readonly FigureDraws[];
  /** In the order of the ids. */
  readonly troubles: readonly DrawTroubles[];
  /** Draws in which a set-up came out impossible or did not stop; left out of every set-up alike. */
  readonly dropped: number;
}

/** Answers all figures of all set-ups for every draw, the shared inputs drawn once for all of them. */
export function sampleSetUps({ job, ...rest }: SampleInput): Sampled {
  return sampledFrom(drawRange(job, { question: 'prediction', ...rest }, 0, rest.draws));
}

/** The figures of all draws by their names. */
export function sampledFrom({ to, bySetUp, troubles, dropped }: DrawnRange): Sampled {
  const named = (figures: Float64Array): FigureDraws =>
    Object.fromEntries(
      figureNames.map((name, k) => [name, figures.subarray(k * to, (k + 1) * to)]),
    ) as FigureDraws;
  return { bySetUp: bySetUp.map(named), troubles, dropped };
}
