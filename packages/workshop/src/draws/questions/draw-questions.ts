import { distanceQuestion } from './distance-question.ts';
import type { DrawQuestion } from './draw-question.ts';
import { predictionQuestion } from './prediction-question.ts';

/** Every question that can be asked of draws, by the name that travels to a worker. */
export const drawQuestions = {
  prediction: predictionQuestion,
  distance: distanceQuestion,
} as const satisfies Readonly<Record<string, DrawQuestion>>;

export type DrawQuestionName = keyof typeof drawQuestions;
