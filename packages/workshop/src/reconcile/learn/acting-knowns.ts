import type { StopModel } from '../model/stop-model.ts';
import type { Ensemble } from './ensemble.ts';

/** Spreads to either side, and the share of a figure's spread that a number must move to be one that acts. */
const reach = 1.5;
const leastMove = 0.04;
/** Correlation over the draws above which it acts too, in standard errors of a correlation by chance. */
const leastCorrelation = 3;
/** Numbers that a plane may have at most. */
const most = 40;

/**
 * Picks the numbers that move the figures: by themselves from the middle, or over the draws, where the middle stands on
 * one side of a bend.
 *
 * @param model - the model
 * @param ensemble - draws from the job, with answers
 * @param places - of the figures in an answer
 * @returns places of the numbers, those that move most first
 */
export function actingKnowns(
  model: StopModel,
  ensemble: Ensemble,
  places: readonly number[],
): readonly number[] {
  const moments = places.map((place) => momentsOf(model, ensemble, place));
  const middle = new Float64Array(model.size);
  const moved = new Float64Array(model.size);
  const departures = new Float64Array(model.knowns.length);
  model.answerFirst(departures, 0, middle, 0);
  const chance = leastCorrelation / Math.sqrt(ensemble.draws);
  const moves = model.knowns.map((_, k) => {
    let greatest = 0;
    for (const side of [-reach, reach]) {
      departures[k] = side;
      model.answerFirst(departures, 0, moved, 0);
      places.forEach((place, j) => {
        const move = Math.abs(moved[place]! - middle[place]!) / (reach * moments[j]!.spread);
        if (move > greatest) greatest = move;
      });
    }
    departures[k] = 0;
    const correlation = Math.max(...moments.map(({ correlations }) => Math.abs(correlations[k]!)));
    return Math.max(greatest >= leastMove ? greatest : 0, correlation >= chance ? correlation : 0);
  });
  return model.knowns
    .map((_, k) => k)
    .filter((k) => moves[k]! > 0)
    .sort((a, b) => moves[b]! - moves[a]!)
    .slice(0, most);
}

interface Moments {
  readonly spread: number;
  /** With each number, 1. */
  readonly correlations: Float64Array;
}

function momentsOf(model: StopModel, { draws, departures, answers }: Ensemble, place: number): Moments {
  const numbers = model.knowns.length;
  const values = Float64Array.from({ length: draws }, (_, i) => answers[i * model.size + place]!);
  const sound = values.filter(Number.isFinite);
  const middle = sound.reduce((sum, value) => sum + value, 0) / sound.length;
  const spread = Math.sqrt(sound.reduce((sum, value) => sum + (value - middle) ** 2, 0) / sound.length);
  const correlations = new Float64Array(numbers);
  for (let i = 0; i < draws; i += 1) {
    const off = (values[i]! - middle) / (spread * sound.length);
    if (!Number.isFinite(off)) continue;
    for (let k = 0; k < numbers; k += 1) correlations[k]! += off * departures[i * numbers + k]!;
  }
  return { spread, correlations };
}
