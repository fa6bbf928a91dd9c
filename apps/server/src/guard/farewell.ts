import type { FastifyReply, FastifyRequest } from 'fastify';
import { PassThrough } from 'node:stream';

/** How long the rest of a refused body is taken in and thrown away, so that its sender gets to read why, ms. */
const lingerTime = 2000;

/**
 * Lets an answer reach a sender who still sends. Closing at once would throw the answer away with the bytes still on
 * the way, so the rest is taken in and thrown away for a moment; then the connection ends, whatever is still to come.
 *
 * @param request - the request
 * @param reply - its answer
 * @param payload - the answer's body
 * @returns the body, or a stream of it that ends when the connection may
 */
export function farewell(request: FastifyRequest, reply: FastifyReply, payload: unknown): unknown {
  if (typeof payload !== 'string' || !isStillSending(request)) return payload;
  const answer = new PassThrough();
  void reply.header('connection', 'close').header('content-length', Buffer.byteLength(payload));
  answer.write(payload);
  const end = () => {
    clearTimeout(timer);
    answer.end();
  };
  const timer = setTimeout(end, lingerTime);
  request.raw.once('end', end).once('close', end).resume();
  return answer;
}

function isStillSending({ raw }: FastifyRequest): boolean {
  const hasBody =
    raw.headers['transfer-encoding'] !== undefined || Number(raw.headers['content-length'] ?? 0) > 0;
  return hasBody && !raw.complete && !raw.readableEnded;
}
