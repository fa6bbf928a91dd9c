import type { Job } from '../../job/job.ts';
import { answerBalance } from './answer-balance.ts';
import { answerDistance } from './answer-distance.ts';
import type { AnswerDraw } from './answer-draw.ts';
import { answerFullDistance } from './answer-full-distance.ts';
import { answerPrediction } from './answer-prediction.ts';
import type { DrawQuestionName } from './draw-questions.ts';

const answers: Readonly<Record<DrawQuestionName, (job: Job) => AnswerDraw>> = {
  prediction: answerPrediction,
  distance: answerDistance,
  'full-distance': answerFullDistance,
  balance: answerBalance,
};

/** How a question is answered, with the room that this takes; apart from the questions, so that asking brings no physics along. */
export function openAnswer(question: DrawQuestionName, job: Job): AnswerDraw {
  return answers[question](job);
}
