import type { FastifyReply, FastifyRequest } from 'fastify';
import type { StoredJob } from '@standstill/workshop';
import { serverProblems } from './problem-codes.ts';
import type { ProblemDocument } from './problem-document.ts';
import { refusalOf } from './refusal-of.ts';
import type { RequestRefusal } from './request-refusal.ts';

/** Media type of RFC 9457. */
export const problemType = 'application/problem+json; charset=utf-8';

/**
 * Answers a request with a problem document; what nobody foresaw also goes to the log.
 *
 * @param error - what was thrown
 * @param request - the request that it ended
 * @param reply - its answer
 */
export function answerProblem(error: unknown, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const refusal = refusalOf(error);
  const { status } = serverProblems[refusal.code];
  if (status >= 500) request.log.error({ err: error, requestId: request.id }, refusal.code);
  const document = problemFor(refusal, { instance: pathOf(request.url), requestId: request.id });
  for (const [name, value] of Object.entries(refusal.extras.headers ?? {})) void reply.header(name, value);
  return reply.code(status).type(problemType).send(JSON.stringify(document));
}

/**
 * @param refusal - what is refused
 * @param about - the request
 * @returns the problem document
 */
export function problemFor(
  refusal: RequestRefusal,
  about: { readonly instance: string; readonly requestId: string },
): ProblemDocument {
  const { status, title } = serverProblems[refusal.code];
  const { problems, current } = refusal.extras;
  return {
    type: `/problems/${refusal.code}`,
    title,
    status,
    detail: refusal.message,
    ...about,
    ...(problems === undefined ? {} : { problems: [...problems] }),
    ...(current === undefined ? {} : { current: currentVersion(current) }),
  };
}

function currentVersion({
  id,
  title,
  version,
  changedAt,
  document,
}: StoredJob): NonNullable<ProblemDocument['current']> {
  return { id, title, version, changedAt, document };
}

/** Without the query: it may hold what does not belong into a log. */
function pathOf(url: string): string {
  return url.split('?')[0] ?? url;
}
