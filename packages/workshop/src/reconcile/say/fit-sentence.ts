import { percent } from '../../words/percent.ts';
import type { FitOfStops } from '../learn/fit-of-stops.ts';

/**
 * Whether the stops before fit the job, in one sentence.
 *
 * @param fit - χ² and its chance
 * @param fits - whether that is called a fit
 * @returns the sentence
 */
export function fitSentence({ p }: FitOfStops, fits: boolean): string {
  if (fits)
    return `The stops before fit the job within its spreads: were it right, ${percent(p)} of such sets would fit worse.`;
  return `The stops before do not fit the job within its spreads: were it right, ${percent(p)} of such sets would fit as badly. Something is not as the job says; pedal force, tires, mass and speed are the first to check.`;
}
