import type { Known } from '../job/known.ts';
import type { DistanceModel } from './distance-model.ts';

/**
 * Answers how far each uncertain number by itself moves each answer: a first look at all of them, at little cost.
 *
 * Equation: max |f(x ± s) − f(x)|, one number at a time with its spread s, the others at their middle
 * Assumes: a number that moves nothing by itself moves little with others; what was passed over like that shows in the
 * total index of the rest.
 *
 * @param model - the answers as a function of the numbers
 * @param knowns - the numbers, in the order of the model
 * @returns m, for each number one entry an answer; 0 where neither side has an answer
 */
export function screenKnowns(model: DistanceModel, knowns: readonly Known[]): readonly Float64Array[] {
  const values = Float64Array.from(knowns, ({ value }) => value);
  const middle = new Float64Array(model.outputs);
  const moved = new Float64Array(model.outputs);
  model.answer(values, middle);
  return knowns.map(({ value, spread, low, high }, index) => {
    const most = new Float64Array(model.outputs);
    for (const side of [-1, 1]) {
      values[index] = Math.max(low, Math.min(high, value + side * spread));
      model.answer(values, moved);
      for (let k = 0; k < most.length; k += 1) {
        const change = Math.abs(moved[k]! - middle[k]!);
        if (change > most[k]!) most[k] = change;
      }
    }
    values[index] = value;
    return most;
  });
}
