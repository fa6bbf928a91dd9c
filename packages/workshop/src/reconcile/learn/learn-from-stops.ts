import type { MeanOfStops } from '../measured/mean-of-stops.ts';
import type { StopModel } from '../model/stop-model.ts';
import { actingKnowns } from './acting-knowns.ts';
import { drawnDepartures, ensembleOf, joined } from './ensemble.ts';
import type { Ensemble } from './ensemble.ts';
import { proposalFrom } from './proposal.ts';
import type { Proposal } from './proposal.ts';
import { responsePlane } from './response-plane.ts';
import type { ResponsePlane } from './response-plane.ts';
import { stopLikelihood } from './stop-likelihood.ts';
import type { StopLikelihood } from './stop-likelihood.ts';
import { effectiveSize, temperedWeights } from './weights.ts';

/** What stops teach of what was not known. */
export interface Learned {
  /** Draws from the job alone. */
  readonly byJob: Ensemble;
  /** All draws, wherever they were looked for, with the weight of each after learning; the weights sum to 1. */
  readonly ensemble: Ensemble;
  readonly weights: Float64Array;
  /** Draws that the weighted ones are worth. */
  readonly effectiveDraws: number;
  /** Straight-line answers of the first set-up's measured figures, near what was learned. */
  readonly plane: ResponsePlane;
  readonly likelihood: StopLikelihood;
}

export interface LearnInput {
  readonly model: StopModel;
  /** Of the first set-up. */
  readonly means: MeanOfStops;
  /** From the job; as many are moved by a first plane, twice as many by the second. */
  readonly draws: number;
  readonly seed: number;
}

/** Share of the draws that the weights of a plane must be worth. */
const wantedShare = 0.25;

/**
 * Learns from measured stops what was not known of car, road and driver.
 *
 * Equation: weight w ∝ L(f(z)) p(z) / Σ_b α_b q_b(z) over three blocks of draws z: from the job (q = p), and moved by
 * `proposalFrom` with a plane through the first block, then with one through both; α_b the share of block b (all draws
 * are weighed by the mixture of all blocks, so that no draw counts for much by chance)
 * Assumes: the model is right for some car and day within the spreads of the job, which are normal and independent.
 *
 * @param input - model, measured means, draws, seed
 * @returns weighted draws; null where too few draws have an answer
 * Source: [gelman-bda], [owen-zhou-2000]
 */
export function learnFromStops({ model, means, draws, seed }: LearnInput): Learned | null {
  const likelihood = stopLikelihood(means);
  const byJob = ensembleOf(model, drawnDepartures(model, draws, seed, 0));
  if (soundDraws(byJob, model) < draws / 2) return null;
  const acting = actingKnowns(model, byJob, means.places);
  if (acting.length === 0) return null;
  const planeOf = (ensemble: Ensemble, weights: Float64Array): ResponsePlane =>
    responsePlane(ensemble, model.size, means.places, acting, weights);
  const search: Search = { model, likelihood, seed };

  const even = Float64Array.from({ length: draws }, (_, i) =>
    Number.isFinite(byJob.answers[i * model.size]!) ? 1 : 0,
  );
  const first = proposalFrom(planeOf(byJob, even), means, 'learned/1');
  const both = joined([byJob, moved(search, first, draws, 1)]);
  const near = temperedWeights(logWeights(search, both, [first], [draws, draws]), wantedShare);
  const second = proposalFrom(planeOf(both, near), means, 'learned/2');
  const ensemble = joined([both, moved(search, second, 2 * draws, 2)]);
  const logarithms = logWeights(search, ensemble, [first, second], [draws, draws, 2 * draws]);
  const weights = temperedWeights(logarithms, 0);
  const plane = planeOf(ensemble, temperedWeights(logarithms, wantedShare));
  return { byJob, ensemble, weights, effectiveDraws: effectiveSize(weights), plane, likelihood };
}

interface Search {
  readonly model: StopModel;
  readonly likelihood: StopLikelihood;
  readonly seed: number;
}

function soundDraws({ answers, draws }: Ensemble, { size }: StopModel): number {
  let sound = 0;
  for (let i = 0; i < draws; i += 1) if (isSound(answers, i * size, size)) sound += 1;
  return sound;
}

/** Whether every set-up has an answer. */
function isSound(answers: Float64Array, place: number, size: number): boolean {
  for (let j = place; j < place + size; j += 1) if (!Number.isFinite(answers[j]!)) return false;
  return true;
}

function moved({ model, seed }: Search, proposal: Proposal, draws: number, block: number): Ensemble {
  const departures = drawnDepartures(model, draws, seed, block);
  proposal.move(departures, model.knowns.length, seed);
  return ensembleOf(model, departures);
}

/** Logarithm of each draw's weight; −∞ without an answer. */
function logWeights(
  { model, likelihood }: Search,
  { draws, departures, answers }: Ensemble,
  proposals: readonly Proposal[],
  sizes: readonly number[],
): Float64Array {
  const shares = sizes.map((size) => Math.log(size / draws));
  return Float64Array.from({ length: draws }, (_, i) => {
    if (!isSound(answers, i * model.size, model.size)) return -Infinity;
    const place = i * model.knowns.length;
    const densities = [
      shares[0]!,
      ...proposals.map((each, b) => shares[b + 1]! + each.logarithm(departures, place)),
    ];
    const most = Math.max(...densities);
    const sum = densities.reduce((total, each) => total + Math.exp(each - most), 0);
    return likelihood.logarithm(answers, i * model.size) - most - Math.log(sum);
  });
}
