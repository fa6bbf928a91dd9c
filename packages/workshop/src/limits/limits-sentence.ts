import { dangerWords } from '../predict/danger-words.ts';
import type { SetUpLimits } from '../results/limits-report.ts';
import type { Prediction } from '../results/prediction.ts';

interface LimitsSentenceInput {
  readonly prediction: Prediction;
  readonly setUps: readonly SetUpLimits[];
}

/** The answer about the first set-up, in one sentence; dangers stand before it. */
export function limitsSentence({ prediction, setUps }: LimitsSentenceInput): string {
  const [first] = setUps;
  if (first === undefined) return 'There is no set-up to answer about.';
  return [...dangerWords(prediction), first.sentence].join(' ');
}
