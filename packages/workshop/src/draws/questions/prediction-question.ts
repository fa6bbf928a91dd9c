import { stopWorkspace } from '@standstill/braking';
import { evaluate } from '../../predict/evaluate.ts';
import { figureNames } from '../../predict/figures.ts';
import type { DrawQuestion } from './draw-question.ts';

/** Draws for which the row of repeated stops is driven too: it costs more than all the rest. */
const mostRows = 200;

/** Everything that a prediction says of a set-up. */
export const predictionQuestion: DrawQuestion = {
  figures: figureNames,
  rangeLength: 50,
  open: ({ conditions }) => {
    const march = stopWorkspace();
    const { count } = conditions.repeatedStops;
    return (settled, row, into) => {
      const { figures } = evaluate(settled, march, row < mostRows ? count : 0);
      for (let k = 0; k < figureNames.length; k += 1) into[k] = figures[figureNames[k]!];
    };
  },
};
