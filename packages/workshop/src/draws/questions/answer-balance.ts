import { curvePlaceOf, placeOf, stateFigureNames } from '../../balance/balance-figures.ts';
import { hottestPads } from '../../balance/hottest-pads.ts';
import { stateFigures } from '../../balance/state-figures.ts';
import type { Job } from '../../job/job.ts';
import { loadStates } from '../../predict/load-state.ts';
import type { AnswerDraw } from './answer-draw.ts';

/**
 * Draws for which the row of repeated stops is driven too: it costs more than all the rest. As many as for a prediction,
 * so that both say the same share of draws with the rear first while the pads are hot.
 */
const mostRows = 200;

/** Answers the question `balance`; its first figure only says that there is an answer. */
export function answerBalance({ conditions }: Job): AnswerDraw {
  const { count } = conditions.repeatedStops;
  return (settled, row, into) => {
    const hot = row < mostRows ? hottestPads(settled, count) : null;
    into[0] = 1;
    for (const state of loadStates) {
      const { figures, curve } = stateFigures(settled, state, hot);
      for (const name of stateFigureNames) into[placeOf(state, name)] = figures[name];
      const [front, rear] = [curvePlaceOf(state, 'frontAdhesion'), curvePlaceOf(state, 'rearAdhesion')];
      curve.forEach((point, index) => {
        into[front + index] = point?.frontAdhesion ?? NaN;
        into[rear + index] = point?.rearAdhesion ?? NaN;
      });
    }
  };
}
