import type { Job } from '../job/job.ts';
import type { DrawRequest } from './draw-request.ts';
import type { DrawnRange } from './drawn-range.ts';
import { openDraws } from './open-draws.ts';

/**
 * Draws a range of a request. Ranges of one request may be drawn anywhere and in any order: put together they are, bit
 * by bit, what one pass gives.
 *
 * @param job - the job
 * @param request - what is drawn
 * @param from - first draw of the range
 * @param to - first draw after it
 * @returns the answers of these draws
 */
export function drawRange(job: Job, request: DrawRequest, from: number, to: number): DrawnRange {
  return openDraws(job, request)(from, to);
}
