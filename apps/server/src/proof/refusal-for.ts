import { invalidJob } from '../jobs/read-document.ts';
import { RequestRefusal } from '../problems/request-refusal.ts';
import type { ProofAnswer } from './proof-answer.ts';

/**
 * @param found - what stands in the way of an answer from kept logs
 * @returns the refusal that carries every problem
 */
export function refusalFor({
  about,
  problems,
}: Extract<ProofAnswer<unknown>, { ok: false }>): RequestRefusal {
  if (about === 'job') return invalidJob(problems);
  const sentences = problems.map(({ found, message }) => `${found}: ${message}`);
  return new RequestRefusal('log-not-usable', sentences.join(' '), { problems });
}
