import { predict, readJobDocument } from '@standstill/workshop';
import type { PredictionAnswer, PredictionTask } from './calculations.ts';

/**
 * @param task - a job document and how to predict it
 * @returns the prediction, or every mistake of the document
 */
export function calculatePrediction({ document, options }: PredictionTask): PredictionAnswer {
  const reading = readJobDocument(document);
  if (!reading.ok) return reading;
  const unknown = (options.setUps ?? []).filter((id) => !reading.job.setUps.some((setUp) => setUp.id === id));
  if (unknown.length > 0)
    return { ok: false, problems: unknown.map((id) => unknownSetUp(id, reading.job.setUps)) };
  return { ok: true, prediction: predict(reading.job, options) };
}

function unknownSetUp(id: string, known: readonly { readonly id: string }[]) {
  const accepted = known.map((setUp) => setUp.id).join(', ');
  const message = `setUps has "${id}", which is none of the job's; accepted: ${accepted}`;
  const nowhere = { file: null, line: null, column: null };
  return { code: 'unknown-set-up', ...nowhere, path: 'options.setUps', found: `"${id}"`, accepted, message };
}
