import type { Job } from '../../job/job.ts';
import type { DrawRequest } from '../draw-request.ts';
import type { DrawnRange } from '../drawn-range.ts';
import { drawQuestions } from '../questions/draw-questions.ts';
import type { DrawHand, DrawPool, DrawWatch } from './draw-pool.ts';
import { DrawsCalledOffError } from './draws-called-off-error.ts';
import { RangeJoin } from './range-join.ts';

/**
 * Draws a whole request with all hands of a pool; each takes the next range as soon as it has none. The same numbers as
 * `drawRange` over all draws, however many hands there are.
 *
 * @param job - the job
 * @param request - what is drawn
 * @param pool - who draws
 * @param watch - who looks on
 * @returns the answers to all draws
 * @throws DrawsCalledOffError where the watch calls it off; what a hand fails with, after which no range is handed out
 */
export async function drawOnPool(
  job: Job,
  request: DrawRequest,
  pool: DrawPool,
  watch: DrawWatch = {},
): Promise<DrawnRange> {
  const { draws } = request;
  const length = rangeFor(request, pool.hands.length);
  const join = new RangeJoin(request);
  const bare = { ...job, runs: [], fillings: [] }; // no draw hangs on them, and they need not travel
  let next = 0;
  let done = 0;
  const work = async (hand: DrawHand): Promise<void> => {
    const drawElsewhere = hand(bare, request);
    while (next < draws) {
      if (watch.isCalledOff?.() === true) throw new DrawsCalledOffError();
      const from = next;
      const to = Math.min(draws, from + length);
      next = to;
      join.add(await drawElsewhere(from, to));
      done += to - from;
      watch.onProgress?.(done, draws);
    }
  };
  try {
    await Promise.all(pool.hands.map(work));
  } catch (error) {
    next = draws;
    throw error;
  }
  return join.whole();
}

/** Draws a range: no more than the question likes, and so many ranges that every hand gets the same number of them. */
function rangeFor({ question, draws }: DrawRequest, hands: number): number {
  const rounds = Math.ceil(draws / (drawQuestions[question].rangeLength * hands));
  return Math.ceil(draws / (rounds * hands));
}
