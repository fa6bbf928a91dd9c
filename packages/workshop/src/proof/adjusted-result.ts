import type { AdjustedDifference, AdjustmentEffect, AdjustmentName } from '@standstill/logs';
import type { Comparison } from '../results/log-report.ts';
import { listOf } from '../words/list-of.ts';
import { signedRange } from '../words/signed-range.ts';
import type { Speaker } from '../words/speaker.ts';

/** What each thing is called. */
const names: Readonly<Record<AdjustmentName, string>> = {
  'run-order': 'order of the runs',
  'run-order-before': 'order of the runs before',
  'run-order-after': 'order of the runs after',
  'first-run': 'first run of a set',
  direction: 'direction',
  headWind: 'head wind',
  surfaceTemperature: 'road temperature',
  tireTemperature: 'tire temperature',
  startTemperature: 'rotor temperature at the start',
};

/** What an effect is of, in words: `each later run`. Of 10 K a step is large enough to be seen. */
const steps: Readonly<Record<AdjustmentName, { readonly of: string; readonly size: number }>> = {
  'run-order': { of: 'each later run', size: 1 },
  'run-order-before': { of: 'each later run before', size: 1 },
  'run-order-after': { of: 'each later run after', size: 1 },
  'first-run': { of: 'the first run', size: 1 },
  direction: { of: 'a run out', size: 1 },
  headWind: { of: 'each m/s of head wind', size: 1 },
  surfaceTemperature: { of: 'each 10 K of the road', size: 10 },
  tireTemperature: { of: 'each 10 K of the tires', size: 10 },
  startTemperature: { of: 'each 10 K of the rotors', size: 10 },
};

/**
 * The difference with run order, warm-up and recorded conditions taken out, in a sentence.
 *
 * @param adjusted - by the regression of both sets
 * @param say - printer of the unit system
 * @returns the difference, m, what was taken out with its effect, and the sentence
 */
export function adjustedResult(
  adjusted: AdjustedDifference,
  say: Speaker,
): NonNullable<Comparison['adjusted']> {
  const { difference, takenOut } = adjusted;
  const known = takenOut.filter(({ effect }) => effect.low > 0 || effect.high < 0);
  const what = listOf(takenOut.map(({ name }) => names[name]));
  const change = signedRange(difference, 'stopping-distance', say);
  return {
    difference_m: { ...difference },
    takenOut: takenOut.map(({ name, effect, unit }) => ({ what: names[name], effect: { ...effect }, unit })),
    sentence: `With ${what} taken out, the change is ${change}; ${effectsWords(known, say)}.`,
  };
}

function effectsWords(known: readonly AdjustmentEffect[], say: Speaker): string {
  if (known.length === 0) return 'none of that moves the distance surely';
  return listOf(
    known.map(({ name, effect }) => {
      const { of, size } = steps[name];
      const { low, high } = effect;
      return `${of} is ${signedRange({ low: size * low, high: size * high }, 'stopping-distance', say)}`;
    }),
  );
}
