import type { FastifyRequest } from 'fastify';
import { RequestRefusal } from '../problems/request-refusal.ts';

const readingMethods = new Set(['GET', 'HEAD', 'OPTIONS']);

/**
 * Refuses a request that a foreign web page may have caused: one that calls the server by a name it does not have, or
 * one that writes and comes from another origin. Programs that send no Origin are let through.
 *
 * @param request - the request, its body not yet read
 * @param hosts - names that the server answers to
 * @throws RequestRefusal
 */
export function checkCaller(request: FastifyRequest, hosts: ReadonlySet<string>): void {
  const host = request.headers.host ?? '';
  const name = host.toLowerCase().replace(/:\d+$/, '');
  if (!hosts.has(name))
    throw new RequestRefusal('host-refused', `Call this server by one of: ${[...hosts].join(', ')}.`);
  if (readingMethods.has(request.method)) return;
  if (isFromElsewhere(request, host.toLowerCase()))
    throw new RequestRefusal(
      'origin-refused',
      'The request came from a page that this server did not give out.',
    );
}

function isFromElsewhere({ headers }: FastifyRequest, host: string): boolean {
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return true;
  const origin = headers.origin?.toLowerCase();
  return origin !== undefined && origin !== `http://${host}` && origin !== `https://${host}`;
}
