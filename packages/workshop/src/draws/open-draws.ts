import { OutOfRangeError } from '@standstill/numerics';
import type { Job } from '../job/job.ts';
import type { Known } from '../job/known.ts';
import { settlingPlan } from '../settle/plan/settling-plan.ts';
import type { Settled } from '../settle/settle.ts';
import type { DrawRequest } from './draw-request.ts';
import { DrawTable } from './draw-table.ts';
import type { DrawnRange } from './drawn-range.ts';
import { knownsOf } from './knowns-of.ts';
import type { AnswerDraw } from './questions/answer-draw.ts';
import { besideTheDistance } from './questions/beside-the-distance.ts';
import { drawQuestions } from './questions/draw-questions.ts';
import { openAnswer } from './questions/open-answer.ts';

/** What went wrong so far in the draws of one set-up. */
interface Tally {
  noRest: number;
  outOfRange: number;
  refusal: string | null;
}

/**
 * Gets everything ready that the ranges of a request have in common, for those who draw several of them.
 *
 * Assumes: one range after the other; the draws of one block are kept until another block is asked for.
 *
 * @param job - the job
 * @param request - what is drawn
 * @returns the function that draws a range, as `drawRange`
 */
export function openDraws(job: Job, request: DrawRequest): (from: number, to: number) => DrawnRange {
  const { setUpIds, draws, seed, overrides, sampling } = request;
  const { figures } = drawQuestions[request.question];
  const knowns = drawnFor(request, job);
  const table = new DrawTable({ knowns, draws, seed, sampling });
  const { settled, fill } = settlingPlan(job, setUpIds, knowns, overrides);
  const answer = openAnswer(request.question, job);
  const answers = setUpIds.map(() => new Float64Array(figures.length));
  return (from, to) => {
    const length = to - from;
    const bySetUp = answers.map(() => new Float64Array(figures.length * length).fill(NaN));
    const troubles = answers.map((): Tally => ({ noRest: 0, outOfRange: 0, refusal: null }));
    let dropped = 0;
    for (let row = from; row < to; row += 1) {
      fill(table.values, table.stride, table.turnTo(row));
      let isSound = true;
      for (let k = 0; k < answers.length; k += 1) {
        if (!isAnswered(answer, settled[k]!, row, answers[k]!, troubles[k]!)) isSound = false;
      }
      if (!isSound) dropped += 1;
      else for (let k = 0; k < answers.length; k += 1) keep(answers[k]!, bySetUp[k]!, row - from, length);
    }
    return { from, to, bySetUp, troubles, dropped };
  };
}

/** What is drawn: all that the answer follows from. A Sobol sequence keeps a dimension for every number that is not known. */
function drawnFor({ question, setUpIds, sampling }: DrawRequest, job: Job): readonly Known[] {
  const knowns = knownsOf(job, setUpIds);
  if (question !== 'distance' || sampling === 'sobol') return knowns;
  const beside = besideTheDistance(job);
  return knowns.filter(({ path }) => !beside.has(path));
}

/** A corner of the spreads may lie outside what the formulas are valid for, or not stop: then it is counted. */
function isAnswered(
  answer: AnswerDraw,
  settled: Settled,
  row: number,
  into: Float64Array,
  tally: Tally,
): boolean {
  try {
    answer(settled, row, into);
  } catch (error) {
    if (!(error instanceof OutOfRangeError)) throw error;
    tally.outOfRange += 1;
    tally.refusal ??= error.message;
    return false;
  }
  if (Number.isFinite(into[0])) return true;
  tally.noRest += 1;
  return false;
}

function keep(answers: Float64Array, into: Float64Array, place: number, length: number): void {
  for (let k = 0; k < answers.length; k += 1) into[k * length + place] = answers[k]!;
}
