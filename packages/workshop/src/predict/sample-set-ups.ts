import { stopWorkspace } from '@standstill/braking';
import type { StopMarch } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import { drawSheet } from '../draws/draw-sheet.ts';
import { knownsOf } from '../draws/knowns-of.ts';
import type { Job } from '../job/job.ts';
import type { Draw } from '../settle/draw.ts';
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

/** Why draws of one set-up gave no distance. */
export interface DrawTroubles {
  /** Draws in which the car does not come to rest. */
  readonly noRest: number;
  /** Draws outside what the formulas are valid for. */
  readonly outOfRange: number;
  /** The first such refusal, with quantity, value and accepted range. */
  readonly refusal: string | null;
}

export interface Sampled {
  /** In the order of the ids. */
  readonly bySetUp: readonly FigureDraws[];
  /** In the order of the ids. */
  readonly troubles: readonly DrawTroubles[];
  /** Draws in which a set-up came out impossible or did not stop; left out of every set-up alike. */
  readonly dropped: number;
}

/** Draws for which the row of repeated stops is driven too: it costs more than all the rest. */
const mostRows = 200;

/** Answers all figures of all set-ups for every draw, the shared inputs drawn once for all of them. */
export function sampleSetUps({ job, setUpIds, overrides, draws, seed }: SampleInput): Sampled {
  const sheet = drawSheet({ knowns: knownsOf(job, setUpIds), draws, seed });
  const bySetUp = setUpIds.map(() => emptyDraws(draws));
  const troubles = setUpIds.map(() => ({ noRest: 0, outOfRange: 0, refusal: null as string | null }));
  const march = stopWorkspace();
  const { count } = job.conditions.repeatedStops;
  const one = (id: string, draw: Draw, rows: number, trouble: (typeof troubles)[number]): Figures | null => {
    const outcome = answered(job, id, draw, overrides, march, rows);
    if (typeof outcome === 'string') {
      trouble.outOfRange += 1;
      trouble.refusal ??= outcome;
      return null;
    }
    if (Number.isFinite(outcome.distance)) return outcome;
    trouble.noRest += 1;
    return null;
  };
  let dropped = 0;
  sheet.forEach((draw, row) => {
    const rows = row < mostRows ? count : 0;
    const all = setUpIds.map((id, index) => {
      const trouble = troubles[index];
      return trouble === undefined ? null : one(id, draw, rows, trouble);
    });
    if (all.includes(null)) dropped += 1;
    else all.forEach((figures, index) => keep(bySetUp[index], row, figures));
  });
  return { bySetUp, troubles, dropped };
}

/** A corner of the spreads may lie outside what the formulas are valid for; then the refusal, in words. */
function answered(
  job: Job,
  id: string,
  draw: Draw,
  overrides: Overrides,
  march: StopMarch,
  rows: number,
): Figures | string {
  try {
    return evaluate(settle(job, id, draw, overrides), march, rows).figures;
  } catch (error) {
    if (error instanceof OutOfRangeError) return error.message;
    throw error;
  }
}

function emptyDraws(draws: number): FigureDraws {
  return Object.fromEntries(
    figureNames.map((name) => [name, new Float64Array(draws).fill(NaN)]),
  ) as FigureDraws;
}

function keep(into: FigureDraws | undefined, row: number, figures: Figures | null): void {
  if (into === undefined || figures === null) return;
  for (const name of figureNames) into[name][row] = figures[name];
}
