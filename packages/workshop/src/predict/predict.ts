import type { UnitSystem } from '@standstill/units';
import type { Job, JobSetUp } from '../job/job.ts';
import { printFillings } from '../job/print-fillings.ts';
import type { Prediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import { settle } from '../settle/settle.ts';
import { caseOf } from './case-of.ts';
import type { Case } from './case-of.ts';
import { changedParts, distanceByPart } from './changed-parts.ts';
import { predictionSentence } from './prediction-sentence.ts';
import { sampleSetUps } from './sample-set-ups.ts';
import { setUpDifference } from './set-up-difference.ts';
import { stopBudgetResult } from './stop-budget-result.ts';
import { verdict } from './verdict.ts';
import type { VerdictInput } from './verdict.ts';
import { antilockChange } from './warnings/antilock-change.ts';
import { inOrder } from './warnings/in-order.ts';
import { jobNotes } from './warnings/model-notes.ts';

/** All SI; what is left out is as the job says. */
export interface PredictOptions {
  /** m/s. */
  readonly speed?: number;
  /** N at the pedal pad. */
  readonly pedalForce?: number;
  /** Draws behind the intervals; 400 where absent. */
  readonly draws?: number;
  /** Any whole number; 1 where absent. */
  readonly seed?: number;
  /** Ids; all where absent. The first is what the others are set against. */
  readonly setUps?: readonly string[];
  /** Units of the sentences; `us` where absent. */
  readonly units?: UnitSystem;
}

/**
 * Answers what the set-ups of a job would do, what each changes against the first, and how sure that is.
 *
 * Assumes: central values come from the central inputs, intervals hold 95 % of the draws; what set-ups share is drawn
 * once for all of them. The row of repeated stops is driven for the first 200 draws.
 *
 * @param job - the job
 * @param options - speed, m/s; pedal force, N; draws, seed; set-ups; units of the sentences
 * @returns the prediction, SI with the unit in each key (°C for temperatures)
 * @throws OutOfRangeError where an override is outside what the formulas are valid for
 * @throws CannotStopError where a set-up does not come to rest
 */
export function predict(job: Job, options: PredictOptions = {}): Prediction {
  const { draws = 400, seed = 1, units = 'us' } = options;
  const overrides = { speed: options.speed, pedalForce: options.pedalForce };
  const setUps = chosenSetUps(job, options.setUps);
  const { bySetUp, dropped } = sampleSetUps({
    job,
    setUpIds: setUps.map(({ id }) => id),
    overrides,
    draws,
    seed,
  });
  const cases = setUps.map((setUp, index) => {
    const drawsOfIt = bySetUp[index];
    if (drawsOfIt === undefined) throw new TypeError(`set-up ${setUp.id} was not sampled`);
    const settled = settle(job, setUp.id, undefined, overrides);
    return caseOf({ job, setUp, settled, draws: drawsOfIt, units });
  });
  const [first, ...others] = cases;
  if (first === undefined) throw new RangeError('the job has no set-up');
  const changes = others.map((other) => changeOf(first, other, units));
  const surface = job.conditions.surface;
  const warnings = inOrder(
    [
      ...cases.flatMap((one) => one.warnings),
      ...others.flatMap((other) => antilockWarning(first, other)),
      ...jobNotes(surface, draws, dropped),
    ],
    cases.length,
  );
  const { speed } = first.settled;
  const pedalForce = first.settled.foot.force;
  return {
    kind: 'prediction',
    version: 1,
    sentence: predictionSentence({
      setUps: cases.map(({ prediction }) => prediction),
      changes,
      warnings,
      speed,
      pedalForce,
      units,
    }),
    job: job.title,
    speed_m_s: speed,
    pedalForce_N: pedalForce,
    surface,
    draws,
    seed,
    setUps: cases.map(({ prediction }) => prediction),
    differences: changes.map((change) => ({ ...change.difference, verdict: verdict(change) })),
    budgets: cases.map(({ setUp, settled }) => stopBudgetResult(setUp, settled, units)),
    warnings,
    assumed: printFillings(job.fillings, units),
  };
}

/** As asked, else all with the car as found first. */
function chosenSetUps(job: Job, ids: readonly string[] | undefined): readonly JobSetUp[] {
  if (ids === undefined)
    return job.setUps.toSorted((a, b) => Number(a.basedOn !== null) - Number(b.basedOn !== null));
  return ids.map((id) => {
    const found = job.setUps.find((setUp) => setUp.id === id);
    if (found === undefined) throw new RangeError(`the job has no set-up "${id}"`);
    return found;
  });
}

function changeOf(reference: Case, changed: Case, units: UnitSystem): VerdictInput {
  const slots = changedParts(reference.setUp, changed.setUp);
  const byPart = distanceByPart(slots, reference.settled, changed.settled);
  return {
    reference: reference.prediction,
    changed: changed.prediction,
    difference: setUpDifference(changed.sampling, reference.sampling, byPart),
    sameTires: !slots.some((slot) => slot === 'frontTire' || slot === 'rearTire'),
    rearLocksFirst: changed.warnings.some(({ code }) => code === 'rear-locks-first'),
    speed: reference.settled.speed,
    pedalForce: reference.settled.foot.force,
    units,
  };
}

function antilockWarning(reference: Case, changed: Case): Warning[] {
  const { id, title } = changed.setUp;
  const warning = antilockChange(id, title, reference.settled, changed.settled);
  return warning === null ? [] : [warning];
}
