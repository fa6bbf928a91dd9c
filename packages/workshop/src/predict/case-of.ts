import { pedalTravel, stopWorkspace } from '@standstill/braking';
import type { RepeatedStop } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import type { Job, JobSetUp } from '../job/job.ts';
import type { SetUpPrediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import type { Settled } from '../settle/settle.ts';
import { CannotStopError } from './cannot-stop-error.ts';
import { evaluate, rowOf } from './evaluate.ts';
import { coldPads, rearFirstRange, startPads } from './lock-looks.ts';
import { rearFirstHot } from './rear-first-hot.ts';
import type { DrawTroubles } from './sample-set-ups.ts';
import type { Sampling } from './set-up-difference.ts';
import { setUpPrediction } from './set-up-prediction.ts';
import { SetUpRangeError } from './set-up-range-error.ts';
import { drawWarnings } from './warnings/draw-warnings.ts';
import { heatNotes } from './warnings/heat-notes.ts';
import { modelNotes } from './warnings/model-notes.ts';
import { pedalWarnings } from './warnings/pedal-warnings.ts';
import { rearFirst } from './warnings/rear-first.ts';
import type { RearFirstHot } from './warnings/rear-first.ts';

/** One set-up on its way through the prediction. */
export interface Case {
  readonly setUp: JobSetUp;
  readonly settled: Settled;
  readonly prediction: SetUpPrediction;
  readonly sampling: Sampling;
  readonly warnings: readonly Warning[];
}

interface CaseInput {
  readonly job: Job;
  readonly setUp: JobSetUp;
  /** With the central values. */
  readonly settled: Settled;
  readonly draws: Sampling['draws'];
  readonly troubles: DrawTroubles;
  readonly units: UnitSystem;
}

/** Everything about one set-up by itself: its figures, its prediction and its warnings. */
export function caseOf(input: CaseInput): Case {
  const { id, title } = input.setUp;
  try {
    return caseInRange(input);
  } catch (error) {
    if (error instanceof OutOfRangeError) throw new SetUpRangeError(id, title, error);
    throw error;
  }
}

function caseInRange(input: CaseInput): Case {
  const { job, setUp, settled, draws } = input;
  const evaluation = evaluate(settled, stopWorkspace(), 0);
  if (!Number.isFinite(evaluation.figures.distance) && evaluation.stop.cameToRest)
    throw new CannotStopError(setUp.id, setUp.title, 'floor');
  if (!evaluation.stop.cameToRest) throw new CannotStopError(setUp.id, setUp.title);
  const { count } = job.conditions.repeatedStops;
  const row = rowOf(settled, count);
  const hot = rearFirstHot(settled, row);
  const prediction = setUpPrediction({
    setUp,
    settled,
    evaluation,
    row,
    draws,
    rearFirstFromStop: hot?.stop ?? null,
  });
  const last = row.at(-1)?.stop;
  const lastDistance = last?.cameToRest === true && row.length === count ? last.distance : NaN;
  return {
    setUp,
    settled,
    prediction,
    sampling: { id: setUp.id, figures: evaluation.figures, draws, lastDistance },
    warnings: warningsOf(input, prediction, row, hot),
  };
}

function warningsOf(
  { job, setUp, settled, draws, troubles, units }: CaseInput,
  prediction: SetUpPrediction,
  row: readonly RepeatedStop[],
  hot: RearFirstHot | null,
): Warning[] {
  const { id, title } = setUp;
  const warm = rearFirstRange(settled, startPads(settled));
  const order = rearFirst({
    id,
    title,
    antilock: settled.setUp.antilock,
    found: warm ?? rearFirstRange(settled, coldPads(settled)),
    coldOnly: warm === null,
    hot,
    share: prediction.balance.rearFirstShare,
    shareHot: prediction.balance.rearFirstShareHot,
  });
  const pedalForce = settled.foot.force;
  const { hoseBeyondTable } = pedalTravel({ setUp: settled.setUp, pedalForce });
  return [
    ...(order === null ? [] : [order]),
    ...pedalWarnings({ prediction, hoseBeyondTable, pedalForce, units }),
    ...drawWarnings({ id, title, troubles, draws, row, asked: job.conditions.repeatedStops.count }),
    ...heatNotes({ setUp, settled, row, prediction, units }),
    ...modelNotes({ setUp, settled }),
  ];
}
