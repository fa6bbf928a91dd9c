import { tQuantile } from '@standstill/numerics';
import { intervalOf } from '../../draws/interval-of.ts';
import type { Estimate } from '../../results/estimate.ts';
import type { Reconciliation } from '../../results/reconciliation.ts';
import { figures } from '../figure.ts';
import type { MeanOfStops } from '../measured/mean-of-stops.ts';
import type { Answers } from './answers.ts';

type Observation = Reconciliation['observations'][number];

/**
 * Sets every measured figure of a set against what the job says of it, and what was learned.
 *
 * @param set - which set
 * @param means - of the set, SI
 * @param answers - of the model for the set's set-up
 * @returns one row a figure, SI
 */
export function observationsOf(
  set: Observation['set'],
  { places, means, scale, degreesOfFreedom }: MeanOfStops,
  answers: Answers,
): Observation[] {
  const reach = tQuantile(0.975, degreesOfFreedom);
  return places.map((place, j) => {
    const half = reach * Math.sqrt(scale[j * (places.length + 1)]!);
    const value = means[j]!;
    const measured = { value, low: value - half, high: value + half };
    const byJob = intervalOf(answers.central(place), answers.byJob(place));
    const learned = answers.learned(place);
    return { set, ...figures[place]!, measured, byJob, learned, agrees: agree(measured, byJob) };
  });
}

/** Whether two differ by no more than both allow together. */
function agree(one: Estimate, other: Estimate): boolean {
  const [upper, lower] = one.value >= other.value ? [one, other] : [other, one];
  return upper.value - lower.value <= Math.hypot(upper.value - upper.low, lower.high - lower.value);
}
