import type { UnitSystem } from '@standstill/units';
import { OutOfRangeError } from '@standstill/numerics';
import { drawRange } from '../draws/draw-range.ts';
import type { DrawRequest } from '../draws/draw-request.ts';
import type { DrawnRange } from '../draws/drawn-range.ts';
import { intervalOf } from '../draws/interval-of.ts';
import { chosenSetUps } from '../job/chosen-set-ups.ts';
import type { Job, JobSetUp } from '../job/job.ts';
import { printFillings } from '../job/print-fillings.ts';
import { loadStates } from '../predict/load-state.ts';
import type { LoadState } from '../predict/load-state.ts';
import { SetUpRangeError } from '../predict/set-up-range-error.ts';
import { inOrder } from '../predict/warnings/in-order.ts';
import { ladenNotes } from '../predict/warnings/model-notes.ts';
import type { BalanceDifference, BalanceReport, SetUpBalance } from '../results/balance-report.ts';
import type { Estimate } from '../results/estimate.ts';
import { settle } from '../settle/settle.ts';
import { speaker } from '../words/speaker.ts';
import { annexSentence } from './annex-words.ts';
import { stateDraws } from './balance-draws.ts';
import type { StateFigureName } from './balance-figures.ts';
import { balanceSentence } from './balance-sentence.ts';
import { balanceVerdict } from './balance-verdict.ts';
import { caseWarnings, changeWarnings } from './balance-warnings.ts';
import type { BalanceCase } from './balance-warnings.ts';
import { hottestPads } from './hottest-pads.ts';
import { lockWords } from './lock-words.ts';
import { parkingSentence } from './parking-words.ts';
import { stateResult } from './state-result.ts';

/** What is left out is as the job says. */
export interface BalanceOptions {
  /** m/s, whose lift is looked at beside standstill. */
  readonly speed?: number;
  /** Draws behind the intervals; 400 where absent. */
  readonly draws?: number;
  /** Any whole number; 1 where absent. */
  readonly seed?: number;
  /** Ids; all where absent. The first is what the others are set against. */
  readonly setUps?: readonly string[];
  /** States of load; both where absent. */
  readonly states?: readonly LoadState[];
  /** Units of the sentences; `us` where absent. */
  readonly units?: UnitSystem;
}

/**
 * Answers which axle locks first, where, and how sure that is: as tested and laden, with ABS and EBD taken as failed, with
 * pads cold, warm and as hot as the repeated stops make them, on every road from wet to dry grip; what UN R13-H Annex 5
 * says of it; how a dead brake pulls; and what the parking brake holds.
 *
 * Assumes: central values come from the central inputs, intervals hold 95 % of the draws; what set-ups share is drawn
 * once for all of them. The row of repeated stops is driven for the first 200 draws.
 *
 * @param job - the job
 * @param options - speed, m/s; draws, seed; set-ups; states of load; units of the sentences
 * @returns the report, SI with the unit in each key
 * @throws OutOfRangeError where an override is outside what the formulas are valid for
 * @throws SetUpRangeError where a set-up is
 */
export function balance(job: Job, options: BalanceOptions = {}): BalanceReport {
  const request = balanceRequest(job, options);
  return balanceFrom(job, options, drawRange(job, request, 0, request.draws));
}

/**
 * The draws that a balance report stands on, for those who have them drawn elsewhere.
 *
 * @param job - the job
 * @param options - as `balance`
 * @returns what to draw
 */
export function balanceRequest(job: Job, options: BalanceOptions = {}): DrawRequest {
  const { draws = 400, seed = 1, speed } = options;
  const setUpIds = chosenSetUps(job, options.setUps).map(({ id }) => id);
  return { question: 'balance', setUpIds, overrides: { speed }, draws, seed };
}

/**
 * The report that follows from draws: the same as `balance`, whoever drew them.
 *
 * @param job - the job
 * @param options - as `balance`
 * @param drawn - all draws of `balanceRequest`
 * @returns the report, SI with the unit in each key
 * @throws SetUpRangeError where a set-up is outside what the formulas are valid for
 */
export function balanceFrom(job: Job, options: BalanceOptions, drawn: DrawnRange): BalanceReport {
  const { draws = 400, seed = 1, units = 'us', states = loadStates } = options;
  const { count } = job.conditions.repeatedStops;
  const say = speaker(units);
  const cases = chosenSetUps(job, options.setUps).map((setUp, index) =>
    caseOf({ job, setUp, index, drawn, options }),
  );
  const [first, ...others] = cases;
  if (first === undefined) throw new RangeError('the job has no set-up');
  const own = cases.map((one) => caseWarnings({ one, states, count }));
  const warnings = inOrder(
    [
      ...own.flat(),
      ...others.flatMap((other) => changeWarnings(first, other)),
      ...(states.includes('laden') ? ladenNotes(job.car) : []),
    ],
    cases.length,
  );
  const setUps = cases.map(({ result }) => result);
  return {
    kind: 'balance-report',
    version: 1,
    sentence: balanceSentence({ setUps, warnings, say }),
    annexSentence: annexSentence(setUps, say),
    job: job.title,
    speed_m_s: first.settled.speed,
    surface: job.conditions.surface,
    draws,
    seed,
    setUps,
    differences: others.map((other, index) =>
      differenceOf({ first, other, drawn, states, index: index + 1, warnings: own[index + 1] ?? [] }),
    ),
    warnings,
    assumed: printFillings(job.fillings, units),
  };
}

interface CaseOfInput {
  readonly job: Job;
  readonly setUp: JobSetUp;
  readonly index: number;
  readonly drawn: DrawnRange;
  readonly options: BalanceOptions;
}

function caseOf({ job, setUp, index, drawn, options }: CaseOfInput): BalanceCase {
  const { units = 'us', states = loadStates, speed } = options;
  const { id, title } = setUp;
  const say = speaker(units);
  try {
    const settled = settle(job, id, undefined, { speed });
    const hotPads = hottestPads(settled, job.conditions.repeatedStops.count);
    const results = states.map((state) =>
      stateResult({ settled, state, hotPads, draws: stateDraws(drawn, index, state) }),
    );
    const result: SetUpBalance = {
      id,
      title,
      sentence: `${title}: ${lockWords(results, say)}.`,
      annexSentence: annexSentence([{ title, states: results }], say),
      parkingSentence: parkingSentence(results, say),
      states: results,
    };
    return { setUp, settled, result };
  } catch (error) {
    if (error instanceof OutOfRangeError) throw new SetUpRangeError(id, title, error);
    throw error;
  }
}

interface DifferenceInput {
  readonly first: BalanceCase;
  readonly other: BalanceCase;
  readonly drawn: DrawnRange;
  readonly states: readonly LoadState[];
  /** Place of `other` among the set-ups. */
  readonly index: number;
  /** Of `other`. */
  readonly warnings: BalanceReport['warnings'];
}

function differenceOf({ first, other, drawn, states, index, warnings }: DifferenceInput): BalanceDifference {
  const differences = states.map((state, place) => {
    const [before, after] = [first.result.states[place], other.result.states[place]];
    if (before === undefined || after === undefined) throw new TypeError(`${state} was not looked at`);
    const [was, is] = [stateDraws(drawn, 0, state), stateDraws(drawn, index, state)];
    const change = (figure: StateFigureName, from: Estimate, to: Estimate): Estimate => {
      const reference = was.of(figure);
      const paired = is.of(figure).map((value, row) => value - (reference[row] ?? NaN));
      return intervalOf(to.value - from.value, paired);
    };
    const orNull = (figure: StateFigureName, from: Estimate | null, to: Estimate | null): Estimate | null =>
      from === null || to === null ? null : change(figure, from, to);
    return {
      state,
      frontForceShare: change('frontForceShare', before.frontForceShare, after.frontForceShare),
      lockDeceleration_g: orNull('firstLock', before.lockDeceleration_g, after.lockDeceleration_g),
      efficiencyAtLock: orNull('efficiency', before.efficiencyAtLock, after.efficiencyAtLock),
    };
  });
  const dangers = warnings.filter(({ severity }) => severity === 'danger');
  const pair = { reference: first.result, changed: other.result };
  return {
    id: other.setUp.id,
    against: first.setUp.id,
    states: differences,
    verdict: balanceVerdict({ ...pair, states: differences, dangers }),
  };
}
