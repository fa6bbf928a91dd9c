import { stopWorkspace } from '@standstill/braking';
import type { Job } from '../../job/job.ts';
import { evaluate } from '../../predict/evaluate.ts';
import { figureNames } from '../../predict/figures.ts';
import type { AnswerDraw } from './answer-draw.ts';

/** Draws for which the row of repeated stops is driven too: it costs more than all the rest. */
const mostRows = 200;

/** Answers the question `prediction`, in a room that is made once. */
export function answerPrediction({ conditions }: Job): AnswerDraw {
  const march = stopWorkspace();
  const { count } = conditions.repeatedStops;
  return (settled, row, into) => {
    const { figures } = evaluate(settled, march, row < mostRows ? count : 0);
    for (let k = 0; k < figureNames.length; k += 1) into[k] = figures[figureNames[k]!];
  };
}
