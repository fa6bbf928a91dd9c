import { requireRange } from '@standstill/numerics';
import type { StopSetComparison } from '@standstill/logs';
import type { Job, JobSetUp } from '../job/job.ts';
import { printFillings } from '../job/print-fillings.ts';
import type { Reconciliation, ReconciliationRefusal } from '../results/reconciliation.ts';
import { changeExplained } from './change/change-explained.ts';
import type { Change } from './change/change-explained.ts';
import { compareDriven } from './change/compare-driven.ts';
import { withOldTires } from './change/with-old-tires.ts';
import type { ExplainStopsInput } from './explain-stops-input.ts';
import { figures, placeOf } from './figure.ts';
import { answersOf } from './learn/answers.ts';
import { fitOfStops } from './learn/fit-of-stops.ts';
import { learnFromStops } from './learn/learn-from-stops.ts';
import type { Learned, LearnInput } from './learn/learn-from-stops.ts';
import { learnedValues } from './learn/learned-values.ts';
import { notToldApart } from './learn/not-told-apart.ts';
import { observationsOf } from './learn/observations.ts';
import { meanOfStops } from './measured/mean-of-stops.ts';
import type { MeasuredStops } from './measured/measured-stops.ts';
import { dayKnowns } from './model/day-knowns.ts';
import { stopModel } from './model/stop-model.ts';
import type { StopModel } from './model/stop-model.ts';
import { refuseReconciliation } from './refuse-reconciliation.ts';
import { beyondTheBrakes } from './say/beyond-the-brakes.ts';
import { fitSentence } from './say/fit-sentence.ts';
import { reconciliationSentence } from './say/reconciliation-sentence.ts';
import { reconciliationWarnings } from './say/reconciliation-warnings.ts';
import { tiresAndBrakes } from './say/tires-and-brakes.ts';

/** Draws under which no plane through them holds. */
const fewestDraws = 100;
/** Chance under which the stops are said not to fit the job. */
const leastChance = 0.01;
/** Draws that the weighted ones must be worth, for their quantiles to hold. */
const leastDraws = 100;

/** What is asked, all of it there. */
export interface AskedOfStops {
  readonly before: JobSetUp;
  readonly after: JobSetUp | null;
  readonly speed: number;
  readonly measured: { readonly before: MeasuredStops; readonly after: MeasuredStops | null };
}

/**
 * The reconciliation of stops that can be held against the model.
 *
 * @param input - as `explainStops`
 * @param asked - set-ups, speed m/s and stops, two a set at least
 * @returns the reconciliation; a refusal where the model has hardly an answer
 */
export function reconciled(
  input: ExplainStopsInput,
  asked: AskedOfStops,
): Reconciliation | ReconciliationRefusal {
  const { seed = 1, draws = 600, units = 'us', confounders = [] } = input;
  const { before, after, speed, measured } = asked;
  requireRange('number of draws', draws, '', fewestDraws, 1e5);
  const { job, brakesAlone } = withOldTires(input.job, before, after);
  const model = modelOf(job, asked, brakesAlone);
  const means = meanOfStops(measured.before, speed);
  const learned = learnedSurely({ model, means, draws, seed });
  if (learned === null)
    return refuseReconciliation({ code: 'model-without-answer', name: (after ?? before).title });
  const fit = fitOfStops(learned, model, seed);
  const fits = fit.p >= leastChance && learned.effectiveDraws >= leastDraws;
  const compared = comparedOf(input, asked, seed);
  const change = after === null ? null : changeOf(model, learned, { fits, compared, seed });
  const about = {
    job,
    before,
    after,
    brakesAlone,
    speed,
    measured,
    fit,
    fits,
    compared,
    change,
    confounders,
    units,
  };
  return {
    kind: 'reconciliation',
    version: 1,
    sentence: reconciliationSentence(about),
    nominalSpeed_m_s: speed,
    before: { setUp: before.id, title: before.title, count: measured.before.stops.length },
    after:
      after === null
        ? null
        : { setUp: after.id, title: after.title, count: measured.after?.stops.length ?? 0 },
    observations: [
      ...observationsOf('before', means, answersOf(model, learned, 0)),
      ...(measured.after === null
        ? []
        : observationsOf('after', meanOfStops(measured.after, speed), answersOf(model, learned, 1))),
    ],
    learned: [...learnedValues(job, before, model, learned)],
    notToldApart: [...tiresAndBrakes(about), ...notToldApart(job, model, learned)],
    fit: { ...fit, sentence: fitSentence(fit, fits) },
    change,
    beyondTheBrakes: beyondTheBrakes(about),
    warnings: reconciliationWarnings({ ...about, effectiveDraws: learned.effectiveDraws }),
    assumed: printFillings(job.fillings, units),
  };
}

/** The set-ups in the model: before, after, and after on the tires of before where those differ. */
function modelOf(
  job: Job,
  { before, after, speed, measured }: AskedOfStops,
  brakesAlone: JobSetUp | null,
): StopModel {
  const startsAtOnset = (set: MeasuredStops | null): boolean => (set ?? measured.before).startsAtOnset;
  const setUps = [
    { id: before.id, startsAtOnset: startsAtOnset(measured.before) },
    ...(after === null ? [] : [{ id: after.id, startsAtOnset: startsAtOnset(measured.after) }]),
    ...(brakesAlone === null || brakesAlone === after
      ? []
      : [{ id: brakesAlone.id, startsAtOnset: startsAtOnset(measured.after) }]),
  ];
  const knowns = dayKnowns(
    job,
    setUps.map(({ id }) => id),
    measured.before,
  );
  return stopModel({ job, setUps, knowns, speed });
}

/** With three times the draws where the first try leaves too few. */
function learnedSurely(input: LearnInput): Learned | null {
  const learned = learnFromStops(input);
  if (learned === null || learned.effectiveDraws >= leastDraws) return learned;
  return learnFromStops({ ...input, draws: 3 * input.draws });
}

function comparedOf(
  { before, after = null }: ExplainStopsInput,
  { speed, measured }: AskedOfStops,
  seed: number,
): StopSetComparison | null {
  if (after === null || measured.after === null) return null;
  return compareDriven({ driven: [before, after], stops: [measured.before, measured.after], speed, seed });
}

function changeOf(
  model: StopModel,
  learned: Learned,
  rest: { readonly fits: boolean; readonly compared: StopSetComparison | null; readonly seed: number },
): Change {
  const last = model.size / figures.length - 1;
  const [old, brakes] = [answersOf(model, learned, 0), answersOf(model, learned, last)];
  const { distance } = placeOf;
  return changeExplained({
    central: brakes.central(distance) - old.central(distance),
    byJob: less(brakes.byJob(distance), old.byJob(distance)),
    drawn: less(brakes.drawn(distance), old.drawn(distance)),
    weights: learned.weights,
    ...rest,
  });
}

function less(values: Float64Array, others: Float64Array): Float64Array {
  return values.map((value, i) => value - others[i]!);
}
