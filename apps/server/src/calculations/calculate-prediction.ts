import { predict, readJobDocument } from '@standstill/workshop';
import type { Job, Problem } from '@standstill/workshop';
import type { PredictionAnswer, PredictionTask } from './calculations.ts';
import { requestProblem } from './request-problem.ts';

/**
 * Predicts a job document as asked.
 *
 * @param task - a job document and how to predict it
 * @returns the prediction, or everything that stands in its way
 */
export function calculatePrediction({ document, options }: PredictionTask): PredictionAnswer {
  const reading = readJobDocument(document);
  if (!reading.ok) return reading;
  const problems = unknownSetUps(reading.job, options.setUps ?? []);
  if (problems.length > 0) return { ok: false, problems };
  try {
    return { ok: true, prediction: predict(reading.job, options) };
  } catch (error) {
    return { ok: false, problems: [impossible(error)] };
  }
}

function unknownSetUps(job: Job, ids: readonly string[]): readonly Problem[] {
  const known = job.setUps.map(({ id }) => id);
  const accepted = known.join(', ');
  return ids
    .filter((id) => !known.includes(id))
    .map((id) => {
      const message = `"${id}" is none of the job's set-ups; accepted: ${accepted}`;
      return requestProblem({
        code: 'unknown-set-up',
        path: 'options.setUps',
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

const expected = new Set(['CannotStopError', 'OutOfRangeError', 'SetUpRangeError']);
