import { standardDeviation } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import type { SetUpDifference } from '../results/prediction.ts';
import { speaker } from '../words/speaker.ts';

/**
 * Answers what drawing the shared inputs once for both set-ups does for their difference.
 *
 * Equation: paired, the variance of x_i − y_i; unpaired, the variance of x plus that of y, as draws of their own would give
 *
 * @param changed - m, distances of one set-up, draw by draw; NaN where there is none
 * @param reference - m, of the other
 * @param units - of the sentence
 * @returns both variances, m², and what they say
 */
export function pairing(
  changed: Float64Array,
  reference: Float64Array,
  units: UnitSystem,
): SetUpDifference['pairing'] {
  const isSound = (_: number, row: number): boolean =>
    Number.isFinite(changed[row]) && Number.isFinite(reference[row]);
  const [x, y] = [changed.filter(isSound), reference.filter(isSound)];
  if (x.length < 2) return null;
  const paired = standardDeviation(x.map((each, row) => each - y[row]!));
  const unpaired = Math.hypot(standardDeviation(x), standardDeviation(y));
  const say = speaker(units);
  const [with_, without] = [paired, unpaired].map((each) => say.rounded(each, 'stopping-distance', 2));
  const sentence = `What both share is drawn once for both: that gives the difference a standard deviation of ${with_}; with draws of their own it would be ${without}.`;
  return { pairedVariance_m2: paired ** 2, unpairedVariance_m2: unpaired ** 2, sentence };
}
