import { linePressures } from '@standstill/braking';
import type { RepeatedStop } from '@standstill/braking';
import { intervalOf } from '../draws/interval-of.ts';
import type { JobSetUp } from '../job/job.ts';
import type { Estimate } from '../results/estimate.ts';
import type { SetUpPrediction } from '../results/prediction.ts';
import type { Settled } from '../settle/settle.ts';
import { balanceResult } from './balance-result.ts';
import type { Evaluation } from './evaluate.ts';
import type { FigureName } from './figures.ts';
import type { FigureDraws } from './sample-set-ups.ts';

export interface SetUpPredictionInput {
  readonly setUp: JobSetUp;
  /** With the central values. */
  readonly settled: Settled;
  readonly evaluation: Evaluation;
  readonly row: readonly RepeatedStop[];
  readonly draws: FigureDraws;
}

/** Everything that is predicted of one set-up, with its intervals. */
export function setUpPrediction(input: SetUpPredictionInput): SetUpPrediction {
  const { setUp, settled, evaluation, row, draws } = input;
  const { figures, stop, order } = evaluation;
  const estimate = (name: FigureName): Estimate => intervalOf(figures[name], draws[name]);
  const whereKnown = (name: FigureName): Estimate | null =>
    Number.isNaN(figures[name]) ? null : estimate(name);
  return {
    id: setUp.id,
    title: setUp.title,
    distance_m: estimate('distance'),
    time_s: estimate('time'),
    meanDeceleration_m_s2: estimate('meanDeceleration'),
    limitedBy: stop.limitedBy,
    pedalForceAtLimit_N: whereKnown('forceAtLimit'),
    pedalTravel_m: estimate('travel'),
    pedalTravelShare: estimate('travelShare'),
    frontLinePressure_Pa: estimate('frontPressure'),
    rearLinePressure_Pa: estimate('rearPressure'),
    boosterRunOut: linePressures({ setUp: settled.setUp, pedalForce: settled.foot.force }).boosterRunOut,
    frontRotorPeak_C: estimate('frontPeak'),
    rearRotorPeak_C: estimate('rearPeak'),
    repeatedStops: row.map(repeatedStopOf),
    balance: balanceResult({
      settled,
      order,
      lockDeceleration: whereKnown('lockDeceleration'),
      rearFirstShare: shareOf(draws.rearFirst),
    }),
  };
}

function repeatedStopOf({
  number,
  bulkAtStart,
  stop,
}: RepeatedStop): SetUpPrediction['repeatedStops'][number] {
  return {
    stop: number,
    distance_m: stop.distance,
    frontRotorStart_C: bulkAtStart.front,
    frontRotorPeak_C: stop.front.peakInterface,
    rearRotorPeak_C: stop.rear.peakInterface,
  };
}

function shareOf(flags: Float64Array): number {
  const told = flags.filter((flag) => !Number.isNaN(flag));
  return told.length === 0 ? 0 : told.reduce((sum, flag) => sum + flag, 0) / told.length;
}
