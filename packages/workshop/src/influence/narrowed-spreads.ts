import { sobolSequence, standardDeviation } from '@standstill/numerics';
import { drawnValue } from '../draws/drawn-value.ts';
import type { Known } from '../job/known.ts';
import type { DistanceModel } from './distance-model.ts';

/** One number, and how well it would be known. */
export interface Surer {
  /** Place in the knowns. */
  readonly index: number;
  /** One standard deviation after it is measured, SI. */
  readonly spread: number;
}

export interface NarrowedSpreadsInput {
  readonly model: DistanceModel;
  readonly knowns: readonly Known[];
  readonly surer: readonly Surer[];
  readonly seed: number;
}

/** Draws that spreads are compared over; the same ones with and without the measurement. */
const draws = 128;

/**
 * Answers what share of its spread each answer keeps once a number is measured and comes out as it is taken now.
 *
 * Equation: s' / s, both over the same draws; in those of s' the number's departures shrink with its spread
 *
 * @param input - the answers as a function of the numbers, and which number gets how sure
 * @returns for each measurement one share an answer, 1; NaN where an answer does not vary
 */
export function narrowedSpreads({
  model,
  knowns,
  surer,
  seed,
}: NarrowedSpreadsInput): readonly Float64Array[] {
  if (surer.length === 0) return [];
  const shares = sobolSequence({ draws, keys: knowns.map(({ path }) => path), seed });
  const now = spreadsOf(model, knowns, shares, null);
  return surer.map((one) => {
    const then = spreadsOf(model, knowns, shares, one);
    return then.map((spread, k) => spread / now[k]!);
  });
}

function spreadsOf(
  model: DistanceModel,
  knowns: readonly Known[],
  shares: Float64Array,
  surer: Surer | null,
): Float64Array {
  const answers = Array.from({ length: model.outputs }, () => new Float64Array(draws));
  const values = new Float64Array(knowns.length);
  const into = new Float64Array(model.outputs);
  for (let row = 0; row < draws; row += 1) {
    knowns.forEach((known, j) => {
      const spread = surer?.index === j ? surer.spread : known.spread;
      values[j] = drawnValue(known, shares[row * knowns.length + j]!, spread);
    });
    model.answer(values, into);
    answers.forEach((column, k) => (column[row] = into[k]!));
  }
  return Float64Array.from(answers, (column) => {
    const sound = column.filter(Number.isFinite);
    return sound.length < 2 ? NaN : standardDeviation(sound);
  });
}
