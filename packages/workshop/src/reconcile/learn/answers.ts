import type { Estimate } from '../../results/estimate.ts';
import { figures } from '../figure.ts';
import type { StopModel } from '../model/stop-model.ts';
import type { Ensemble } from './ensemble.ts';
import type { Learned } from './learn-from-stops.ts';
import { weightedEstimate } from './weighted-estimate.ts';

/** The model's figures of one set-up, SI: by the central values, over draws from the job, and after learning. */
export interface Answers {
  readonly central: (place: number) => number;
  readonly byJob: (place: number) => Float64Array;
  readonly learned: (place: number) => Estimate;
  /** Over all weighted draws. */
  readonly drawn: (place: number) => Float64Array;
}

/**
 * The model's figures of one of its set-ups.
 *
 * @param model - the model
 * @param learned - its draws
 * @param index - which set-up
 * @returns the figures by their places
 */
export function answersOf(model: StopModel, learned: Learned, index: number): Answers {
  const central = new Float64Array(model.size);
  model.answer(new Float64Array(model.knowns.length), 0, central, 0);
  const column = ({ draws, answers }: Ensemble, place: number): Float64Array =>
    Float64Array.from({ length: draws }, (_, i) => answers[i * model.size + index * figures.length + place]!);
  const drawn = (place: number): Float64Array => column(learned.ensemble, place);
  return {
    central: (place) => central[index * figures.length + place]!,
    byJob: (place) => column(learned.byJob, place),
    drawn,
    learned: (place) => weightedEstimate(drawn(place), learned.weights),
  };
}
