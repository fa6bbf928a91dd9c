import type { Job } from '../../job/job.ts';
import type { Reconciliation } from '../../results/reconciliation.ts';
import { listOf } from '../../words/list-of.ts';
import { figures, placeOf } from '../figure.ts';
import type { StopModel } from '../model/stop-model.ts';
import { causeOf, causes } from './cause.ts';
import type { CauseId } from './cause.ts';
import type { Learned } from './learn-from-stops.ts';

type Group = Reconciliation['notToldApart'][number];

/** Correlation of a cause with the rest of its group from which on they count as not told apart. */
const leastCorrelation = 0.5;
/** Share of the variance of a figure that a cause must carry beforehand to be one that acts. */
const leastShare = 0.04;
/** Share of its own spread that a cause must keep after learning to be one that was not told. */
const leastKept = 0.5;
/** Causes that one sentence can hold. */
const most = 5;

/** The effect of one cause on a figure, in every weighted draw. */
interface Effect {
  readonly id: CauseId;
  readonly values: Float64Array;
  readonly before: number;
}

/**
 * Names what the stops can't tell apart: causes of one figure, each of which keeps most of its spread after learning, but
 * not without the others.
 *
 * Equation: effect of a cause e_c = Σ h_k z_k over its numbers, h from the plane; correlation of e_c with the sum of the
 * others' effects over the weighted draws, −0.5 or less
 *
 * @param job - the job
 * @param model - whose numbers they are
 * @param learned - weighted draws and plane
 * @returns one group a figure at most, the same group only once
 */
export function notToldApart(job: Job, model: StopModel, learned: Learned): Group[] {
  const { places } = learned.likelihood.means;
  const asked = [places.includes(placeOf.developed) ? placeOf.developed : placeOf.distance, placeOf.buildUp];
  const groups = asked
    .filter((place) => places.includes(place))
    .map((place) => groupOf(job, model, learned, place));
  return groups.filter(
    (group, index) => group !== null && groups.findIndex((other) => sameTitles(group, other)) === index,
  ) as Group[];
}

function sameTitles(one: Group | null, other: Group | null): boolean {
  return one !== null && other !== null && listOf(one.titles) === listOf(other.titles);
}

function groupOf(job: Job, model: StopModel, learned: Learned, place: number): Group | null {
  const effects = effectsOn(job, model, learned, place);
  const whole = effects.reduce((sum, { before }) => sum + before, 0);
  const kept = effects
    .filter(({ before, values }) => {
      const after = covariance(values, values, learned.weights);
      return before >= leastShare * whole && after >= leastKept ** 2 * before;
    })
    .toSorted((a, b) => b.before - a.before);
  const group = kept.filter((effect) => againstRest(effect, kept, learned.weights) <= -leastCorrelation);
  const named = (group.length >= 2 ? group : kept.slice(0, 2)).slice(0, most);
  const [first, second] = named;
  if (first === undefined || second === undefined) return null;
  const correlation = againstRest(first, named, learned.weights);
  if (correlation > -leastCorrelation) return null;
  const titles = named.map(({ id }) => causes[id].title);
  const toKnow = [...new Set(named.flatMap(({ id }) => causes[id].toKnow ?? []))].slice(0, 3);
  const figure = figures[place]!.title.toLowerCase();
  return {
    titles,
    correlation,
    sentence: `These stops can't tell ${listOf(titles)} apart: more of one and less of another gives the same ${figure}.`,
    toTellApart: toKnow.length === 0 ? null : `To tell them apart, ${toKnow.join('; ')}.`,
  };
}

function effectsOn(
  job: Job,
  model: StopModel,
  { plane, ensemble, likelihood }: Learned,
  place: number,
): Effect[] {
  const row = likelihood.means.places.indexOf(place);
  const numbers = model.knowns.length;
  const byCause = new Map<CauseId, { readonly values: Float64Array; before: number }>();
  plane.acting.forEach((k, at) => {
    const slope = plane.slopes[row * plane.acting.length + at]!;
    const id = causeOf(job, model.knowns[k]!);
    const effect = byCause.get(id) ?? { values: new Float64Array(ensemble.draws), before: 0 };
    effect.before += slope * slope;
    for (let i = 0; i < ensemble.draws; i += 1)
      effect.values[i] = effect.values[i]! + slope * ensemble.departures[i * numbers + k]!;
    byCause.set(id, effect);
  });
  return [...byCause].map(([id, effect]) => ({ id, ...effect }));
}

/** Correlation of one effect with the sum of the others. */
function againstRest(one: Effect, all: readonly Effect[], weights: Float64Array): number {
  const rest = new Float64Array(weights.length);
  for (const other of all)
    if (other !== one) other.values.forEach((value, i) => (rest[i] = rest[i]! + value));
  const both = covariance(one.values, rest, weights);
  return both / Math.sqrt(covariance(one.values, one.values, weights) * covariance(rest, rest, weights));
}

function covariance(a: Float64Array, b: Float64Array, weights: Float64Array): number {
  const middle = (values: Float64Array): number =>
    values.reduce((sum, value, i) => sum + weights[i]! * value, 0);
  const [ofA, ofB] = [middle(a), middle(b)];
  return a.reduce((sum, value, i) => sum + weights[i]! * (value - ofA) * (b[i]! - ofB), 0);
}
