import { boilingPointAtAge, linePressures } from '@standstill/braking';
import type { RepeatedStop } from '@standstill/braking';
import { intervalOf } from '../draws/interval-of.ts';
import type { JobSetUp } from '../job/job.ts';
import type { Estimate } from '../results/estimate.ts';
import type { SetUpPrediction } from '../results/prediction.ts';
import type { Settled } from '../settle/settle.ts';
import { balanceResult } from './balance-result.ts';
import { hottestFluid } from './evaluate.ts';
import type { Evaluation } from './evaluate.ts';
import type { FigureName } from './figures.ts';
import type { FigureDraws } from './sample-set-ups.ts';
import { shareOf } from './share-of.ts';
import { beyondModel } from './warnings/heat-notes.ts';

export interface SetUpPredictionInput {
  readonly setUp: JobSetUp;
  /** With the central values. */
  readonly settled: Settled;
  readonly evaluation: Evaluation;
  readonly row: readonly RepeatedStop[];
  readonly rearFirstFromStop: number | null;
  readonly draws: FigureDraws;
}

/** Everything that is predicted of one set-up, with its intervals. */
export function setUpPrediction(input: SetUpPredictionInput): SetUpPrediction {
  const { setUp, settled, evaluation, row, draws } = input;
  const { figures, stop, order } = evaluation;
  const estimate = (name: FigureName): Estimate => intervalOf(figures[name], draws[name]);
  const pedalForce = figures.forceThere;
  return {
    id: setUp.id,
    title: setUp.title,
    distance_m: estimate('distance'),
    time_s: estimate('time'),
    meanDeceleration_m_s2: estimate('meanDeceleration'),
    limitedBy: stop.limitedBy,
    pedalForceAtLimit_N: figures.limitReached === 1 ? estimate('forceAtLimit') : null,
    limitBeyondFootShare: 1 - shareOf(draws.limitReached, figures.limitReached),
    pedalForceThere_N: pedalForce,
    pedalBottoms: figures.bottoms === 1,
    pedalBottomsShare: shareOf(draws.bottoms, figures.bottoms),
    pedalTravel_m: estimate('travel'),
    pedalTravelShare: estimate('travelShare'),
    frontLinePressure_Pa: estimate('frontPressure'),
    rearLinePressure_Pa: estimate('rearPressure'),
    hasBooster: settled.setUp.booster.kind !== 'none',
    boosterRunOut:
      settled.setUp.booster.kind !== 'none' &&
      linePressures({ setUp: settled.setUp, pedalForce }).boosterRunOut,
    atTiresLimit: atTiresLimit(settled, evaluation, estimate),
    frontRotorPeak_C: estimate('frontPeak'),
    rearRotorPeak_C: estimate('rearPeak'),
    fluid: fluidOf(input),
    repeatedStops: row
      .filter((one) => one.stop.cameToRest)
      .map((one) => ({ ...repeatedStopOf(one), beyondModel: beyondModel(settled, one) })),
    balance: balanceResult({
      settled,
      order,
      lockDeceleration: Number.isNaN(figures.lockDeceleration) ? null : estimate('lockDeceleration'),
      rearFirstShare: shareOf(draws.rearFirst),
      rearFirstShareHot: row.length === 0 ? null : shareOf(draws.rearFirstHot),
      rearFirstFromStop: input.rearFirstFromStop,
    }),
  };
}

function atTiresLimit(
  { setUp, foot }: Settled,
  { figures }: Evaluation,
  estimate: (name: FigureName) => Estimate,
): SetUpPrediction['atTiresLimit'] {
  if (setUp.antilock.kind !== 'none' || figures.limitReached !== 1) return null;
  if (figures.forceAtLimit >= foot.force) return null;
  return {
    pedalForce_N: estimate('heldForce'),
    pedalTravel_m: estimate('heldTravel'),
    pedalTravelShare: estimate('heldTravelShare'),
    frontLinePressure_Pa: estimate('heldFrontPressure'),
    rearLinePressure_Pa: estimate('heldRearPressure'),
  };
}

function repeatedStopOf({
  number,
  bulkAtStart,
  stop,
  fluid,
}: RepeatedStop): Omit<SetUpPrediction['repeatedStops'][number], 'beyondModel'> {
  return {
    stop: number,
    distance_m: stop.distance,
    frontRotorStart_C: bulkAtStart.front,
    fluidPeak_C: Math.max(fluid.front, fluid.rear),
    frontRotorPeak_C: stop.front.peakInterface,
    rearRotorPeak_C: stop.rear.peakInterface,
  };
}

/** What the repeated stops do to the fluid; null where none are asked for. */
function fluidOf({ settled, row, draws }: SetUpPredictionInput): SetUpPrediction['fluid'] {
  if (row.length === 0) return null;
  const highest = hottestFluid(row);
  const boiling = boilingPointAtAge(settled.setUp.fluid);
  return {
    highest_C: intervalOf(highest, draws.fluidPeak),
    boiling_C: boiling,
    boilsShare: shareOf(draws.fluidBoils, highest > boiling ? 1 : 0),
  };
}
