import { stopWorkspace } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import { drawSheet } from '../draws/draw-sheet.ts';
import { knownsOf } from '../draws/knowns-of.ts';
import type { Job } from '../job/job.ts';
import { settle } from '../settle/settle.ts';
import type { Overrides } from '../settle/settle.ts';
import { evaluate } from './evaluate.ts';
import { figureNames } from './figures.ts';
import type { FigureName, Figures } from './figures.ts';

/** Every figure of one set-up over the draws; row i of one set-up belongs to row i of every other. */
export type FigureDraws = Readonly<Record<FigureName, Float64Array>>;

export interface SampleInput {
  readonly job: Job;
  readonly setUpIds: readonly string[];
  readonly overrides: Overrides;
  readonly draws: number;
  readonly seed: number;
}

export interface Sampled {
  /** In the order of the ids. */
  readonly bySetUp: readonly FigureDraws[];
  /** Draws in which a set-up came out impossible or did not stop; left out of every set-up alike. */
  readonly dropped: number;
}

/** Draws for which the row of repeated stops is driven too: it costs more than all the rest. */
const mostRows = 200;

/** Answers all figures of all set-ups for every draw, the shared inputs drawn once for all of them. */
export function sampleSetUps({ job, setUpIds, overrides, draws, seed }: SampleInput): Sampled {
  const sheet = drawSheet({ knowns: knownsOf(job, setUpIds), draws, seed });
  const bySetUp = setUpIds.map(() => emptyDraws(draws));
  const march = stopWorkspace();
  const { count } = job.conditions.repeatedStops;
  let dropped = 0;
  sheet.forEach((draw, row) => {
    const rows = row < mostRows ? count : 0;
    const all = possible(() =>
      setUpIds.map((id) => evaluate(settle(job, id, draw, overrides), march, rows).figures),
    );
    if (all === null || all.some(({ distance }) => !Number.isFinite(distance))) dropped += 1;
    else all.forEach((figures, index) => keep(bySetUp[index], row, figures));
  });
  return { bySetUp, dropped };
}

/** A corner of the spreads may lie outside what the formulas are valid for; such a draw is counted, not guessed. */
function possible<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

function emptyDraws(draws: number): FigureDraws {
  return Object.fromEntries(
    figureNames.map((name) => [name, new Float64Array(draws).fill(NaN)]),
  ) as FigureDraws;
}

function keep(into: FigureDraws | undefined, row: number, figures: Figures): void {
  if (into === undefined) return;
  for (const name of figureNames) into[name][row] = figures[name];
}
