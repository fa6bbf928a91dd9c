import { latinHypercubeColumn } from '@standstill/numerics';
import { cutQuantile } from '../../draws/cut-quantile.ts';
import type { StopModel } from '../model/stop-model.ts';

/** Possible cars and days with what a logger would find of each. */
export interface Ensemble {
  readonly draws: number;
  /** Departures of each number from its middle, in spreads: number k of draw i at [i × knowns + k]. */
  readonly departures: Float64Array;
  /** Figures of all set-ups, draw after draw. */
  readonly answers: Float64Array;
}

/**
 * Draws from what the job says, each number by a Latin hypercube of its own: in the first block the very draws that a
 * prediction of as many draws takes with the same seed.
 *
 * @param model - whose numbers are drawn
 * @param draws - how many
 * @param seed - any whole number
 * @param block - 0 for the first
 * @returns departures, in spreads, draw after draw
 */
export function drawnDepartures(
  { knowns }: StopModel,
  draws: number,
  seed: number,
  block: number,
): Float64Array {
  const departures = new Float64Array(draws * knowns.length);
  const column = new Float64Array(draws);
  knowns.forEach(({ path }, k) => {
    latinHypercubeColumn({ key: block === 0 ? path : `${path}#learned-${block}`, seed }, column);
    for (let i = 0; i < draws; i += 1) departures[i * knowns.length + k] = cutQuantile(column[i]!);
  });
  return departures;
}

/**
 * Asks the model of every draw.
 *
 * @param model - the model
 * @param departures - in spreads, draw after draw
 * @returns the draws with their answers
 */
export function ensembleOf(model: StopModel, departures: Float64Array): Ensemble {
  const numbers = model.knowns.length;
  const draws = departures.length / numbers;
  const answers = new Float64Array(draws * model.size);
  for (let i = 0; i < draws; i += 1) model.answer(departures, i * numbers, answers, i * model.size);
  return { draws, departures, answers };
}

/** Draws one after the other. */
export function joined(ensembles: readonly Ensemble[]): Ensemble {
  const put = (pick: (ensemble: Ensemble) => Float64Array): Float64Array => {
    const whole = new Float64Array(ensembles.reduce((sum, each) => sum + pick(each).length, 0));
    let at = 0;
    for (const each of ensembles) {
      whole.set(pick(each), at);
      at += pick(each).length;
    }
    return whole;
  };
  return {
    draws: ensembles.reduce((sum, { draws }) => sum + draws, 0),
    departures: put(({ departures }) => departures),
    answers: put(({ answers }) => answers),
  };
}
