import { dangerWords } from '../predict/danger-words.ts';
import type { SetUpLimits } from '../results/limits-report.ts';
import type { Prediction } from '../results/prediction.ts';

interface LimitsSentenceInput {
  readonly prediction: Prediction;
  readonly setUps: readonly SetUpLimits[];
}

/** The answer about the first set-up, in words that a person can repeat: dangers, the limit, what to measure next. */
export function limitsSentence({ prediction, setUps }: LimitsSentenceInput): string {
  const [first] = setUps;
  if (first === undefined) return 'There is no set-up to answer about.';
  const measure = first.measureNext[0]?.sentence ?? noMeasurement;
  return [...dangerWords(prediction), first.sentence, measure].join(' ');
}

/** Said where no measurement would narrow the distance enough to be worth it. */
export const noMeasurement = 'No single measurement would narrow this distance much.';
