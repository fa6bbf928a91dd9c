import type { Problem } from '@standstill/workshop';

/**
 * Makes a problem of a request, which has no file, lines and columns.
 *
 * @param about - code, place, what was found, what is accepted, all in one line
 * @returns the problem
 */
export function requestProblem(
  about: Pick<Problem, 'code' | 'path' | 'found' | 'accepted' | 'message'>,
): Problem {
  return { ...about, file: null, line: null, column: null };
}
