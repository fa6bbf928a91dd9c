import type { z } from 'zod';
import type { App } from '../app.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import { answerOrPicture, pictureBody, pictureQuery, wantsPicture } from './picture-request.ts';
import type { ProofAnswer } from './proof-answer.ts';
import { refusalFor } from './refusal-for.ts';

/** A request that is answered from kept logs, and by a picture where one is wanted. */
export interface ProofRoute<Body, Answer extends { readonly sentence: string }> {
  readonly path: `/api/${string}`;
  readonly operationId: string;
  readonly summary: string;
  readonly body: z.ZodType<Body>;
  readonly answer: z.ZodType<Answer>;
  /** @param picture - whether it is to be drawn */
  readonly calculate: (body: Body, picture: boolean) => Promise<ProofAnswer<Answer>>;
}

/** Answers such a request; keeps nothing. */
export function proofRoute<Body, Answer extends { readonly sentence: string }>(
  app: App,
  { path, operationId, summary, body, answer, calculate }: ProofRoute<Body, Answer>,
): void {
  const schema = {
    operationId,
    summary,
    querystring: pictureQuery,
    body,
    response: { 200: answerOrPicture(answer), ...problemAnswers },
  };
  app.post(path, { schema }, async (request, reply) => {
    const wanted = wantsPicture(request, request.query);
    const found = await calculate(request.body as Body, wanted);
    if (!found.ok) throw refusalFor(found);
    void reply.header('vary', 'accept');
    if (!wanted) return reply.send(found.answer);
    const { type, body: drawn } = pictureBody(found.picture, found.answer.sentence);
    return reply.type(type).send(drawn);
  });
}
