import { readJobDocument } from '@standstill/workshop';
import type { Job, Problem } from '@standstill/workshop';
import { requestProblem } from './request-problem.ts';

/** What was computed of a job, or everything that stands in its way. */
export type OfJob<T> =
  { readonly ok: true; readonly answer: T } | { readonly ok: false; readonly problems: readonly Problem[] };

/** Set-ups that are asked for, and where in the request. */
interface SetUpsAsked {
  readonly path: string;
  readonly ids: readonly string[];
}

/**
 * Computes something of a job document.
 *
 * @param document - as it was sent or kept
 * @param asked - set-ups that are asked for
 * @param compute - what to compute of the job
 * @returns the answer; problems where the document is not a job, has no such set-up, or is beyond the formulas
 */
export function ofJob<T>(document: unknown, asked: SetUpsAsked, compute: (job: Job) => T): OfJob<T> {
  const reading = readJobDocument(document);
  if (!reading.ok) return reading;
  const problems = unknownSetUps(reading.job, asked);
  if (problems.length > 0) return { ok: false, problems };
  try {
    return { ok: true, answer: compute(reading.job) };
  } catch (error) {
    return { ok: false, problems: [impossible(error)] };
  }
}

function unknownSetUps(job: Job, { path, ids }: SetUpsAsked): readonly Problem[] {
  const known = job.setUps.map(({ id }) => id);
  const accepted = known.join(', ');
  return ids
    .filter((id) => !known.includes(id))
    .map((id) => {
      const message = `"${id}" is none of the job's set-ups; accepted: ${accepted}`;
      return requestProblem({
        code: 'unknown-set-up',
        path,
        found: `"${id}"`,
        accepted,
        message,
      });
    });
}

/** A car that does not stop, a speed that no formula covers: the person's input, not our failure. */
function impossible(error: unknown): Problem {
  if (!(error instanceof Error) || !expected.has(error.name) || !('code' in error)) throw error;
  const accepted = 'values that the formulas hold for';
  return requestProblem({
    code: String(error.code),
    path: 'options',
    found: 'this job',
    accepted,
    message: error.message,
  });
}

const expected = new Set(['CannotStopError', 'OutOfRangeError', 'PedalPointsError', 'SetUpRangeError']);
