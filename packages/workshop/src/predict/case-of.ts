import { pedalTravel, rearFirstDecelerations, stopWorkspace } from '@standstill/braking';
import type { RepeatedStop } from '@standstill/braking';
import type { UnitSystem } from '@standstill/units';
import type { Job, JobSetUp } from '../job/job.ts';
import type { SetUpPrediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import type { Settled } from '../settle/settle.ts';
import { CannotStopError } from './cannot-stop-error.ts';
import { evaluate, grippiestLockInputOf, rowOf } from './evaluate.ts';
import type { Sampling } from './set-up-difference.ts';
import { setUpPrediction } from './set-up-prediction.ts';
import { modelNotes } from './warnings/model-notes.ts';
import { pedalWarnings } from './warnings/pedal-warnings.ts';
import { rearFirst } from './warnings/rear-first.ts';

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
  readonly units: UnitSystem;
}

/** Everything about one set-up by itself: its figures, its prediction and its warnings. */
export function caseOf({ job, setUp, settled, draws, units }: CaseInput): Case {
  const evaluation = evaluate(settled, stopWorkspace(), 0);
  if (!evaluation.stop.cameToRest) throw new CannotStopError(setUp.id, setUp.title);
  const row = rowOf(settled, job.conditions.repeatedStops.count);
  const prediction = setUpPrediction({ setUp, settled, evaluation, row, draws });
  const lastDistance = row.at(-1)?.stop.distance ?? NaN;
  const sampling = { id: setUp.id, figures: evaluation.figures, draws, lastDistance };
  return {
    setUp,
    settled,
    prediction,
    sampling,
    warnings: warningsOf(setUp, settled, prediction, row, units),
  };
}

function warningsOf(
  setUp: JobSetUp,
  settled: Settled,
  { balance, boosterRunOut, pedalTravelShare }: SetUpPrediction,
  row: readonly RepeatedStop[],
  units: UnitSystem,
): Warning[] {
  const { id, title } = setUp;
  const found = rearFirstDecelerations(grippiestLockInputOf(settled));
  const order = rearFirst({ id, title, found, share: balance.rearFirstShare });
  const travel = pedalTravel({ setUp: settled.setUp, pedalForce: settled.foot.force });
  const pedal = pedalWarnings({ id, title, travel, boosterRunOut, shareHigh: pedalTravelShare.high });
  return [...(order === null ? [] : [order]), ...pedal, ...modelNotes({ setUp, settled, row, units })];
}
