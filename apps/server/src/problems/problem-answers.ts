import { problemDocument } from './problem-document.ts';

const answer = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: problemDocument } },
});

/** The part of a route's answers that is the same everywhere, for the API's description. */
export const problemAnswers = {
  '4xx': answer('Refused: what is wrong and what is accepted.'),
  '5xx': answer('Failed: nothing is known to be lost.'),
};
