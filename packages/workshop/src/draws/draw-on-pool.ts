import type { Job } from '../job/job.ts';
import type { DrawPool, DrawHand, DrawWatch } from './draw-pool.ts';
import type { DrawRequest } from './draw-request.ts';
import type { DrawnRange } from './drawn-range.ts';
import { DrawsCalledOffError } from './draws-called-off-error.ts';
import { drawQuestions } from './questions/draw-questions.ts';
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
 * @throws DrawsCalledOffError where the watch calls it off; whatever a hand fails with, after which no hand starts anew
 */
export async function drawOnPool(
  job: Job,
  request: DrawRequest,
  pool: DrawPool,
  watch: DrawWatch = {},
): Promise<DrawnRange> {
  const { draws } = request;
  const { rangeLength } = drawQuestions[request.question];
  const join = new RangeJoin(request);
  let next = 0;
  let done = 0;
  const work = async (hand: DrawHand): Promise<void> => {
    while (next < draws) {
      if (watch.isCalledOff?.() === true) throw new DrawsCalledOffError();
      const from = next;
      const to = Math.min(draws, from + rangeLength);
      next = to;
      join.add(await hand({ job, request, from, to }));
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
