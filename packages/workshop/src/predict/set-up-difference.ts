import type { UnitSystem } from '@standstill/units';
import { intervalOf } from '../draws/interval-of.ts';
import type { Estimate } from '../results/estimate.ts';
import type { SetUpDifference } from '../results/prediction.ts';
import type { Figures, FigureName } from './figures.ts';
import { pairing } from './pairing.ts';
import type { FigureDraws } from './sample-set-ups.ts';

/** A set-up's figures with the central values and over the draws. */
export interface Sampling {
  readonly id: string;
  readonly figures: Figures;
  readonly draws: FigureDraws;
  /** m, last repeated stop with the central values; NaN where the car does not come to rest in it. */
  readonly lastDistance: number;
}

/**
 * What one set-up changes against another, draw by draw, so that what both share cancels.
 *
 * @param changed - the set-up
 * @param reference - what it is set against
 * @param byPart - which part buys which distance, m
 * @param units - of the sentence on pairing
 * @returns set-up minus reference: distances and travel in m, force in N
 */
export function setUpDifference(
  changed: Sampling,
  reference: Sampling,
  byPart: SetUpDifference['byPart'],
  units: UnitSystem,
): Omit<SetUpDifference, 'verdict'> {
  const between = (name: FigureName): Estimate =>
    intervalOf(
      changed.figures[name] - reference.figures[name],
      minus(changed.draws[name], reference.draws[name]),
    );
  const last = changed.lastDistance - reference.lastDistance;
  const lastDraws = minus(changed.draws.lastDistance, reference.draws.lastDistance);
  const reached = changed.figures.limitReached === 1 && reference.figures.limitReached === 1;
  return {
    id: changed.id,
    against: reference.id,
    distance_m: between('distance'),
    lastRepeatedStop_m: Number.isNaN(last) ? null : intervalOf(last, lastDraws),
    pedalTravel_m: between('travel'),
    pedalForceAtLimit_N: reached ? between('forceAtLimit') : null,
    byPart,
    pairing: pairing(changed.draws.distance, reference.draws.distance, units),
  };
}

function minus(left: Float64Array, right: Float64Array): Float64Array {
  return left.map((value, row) => value - (right[row] ?? NaN));
}
