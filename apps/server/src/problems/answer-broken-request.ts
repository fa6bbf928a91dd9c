import type { Socket } from 'node:net';
import { problemType } from './answer-problem.ts';
import { serverProblems } from './problem-codes.ts';

/**
 * Answers bytes that are no HTTP request, before there is a request to speak of.
 *
 * @param error - what the parser said
 * @param socket - the connection, ended here
 */
export function answerBrokenRequest(error: Error & { readonly code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) return void socket.destroy();
  const { status, title } = serverProblems['request-malformed'];
  const detail = 'What was sent is not an HTTP request that the server can read.';
  const body = JSON.stringify({
    type: '/problems/request-malformed',
    title,
    status,
    detail,
    instance: '',
    requestId: '',
  });
  const head = [
    `HTTP/1.1 ${status} Bad Request`,
    `Content-Type: ${problemType}`,
    `Content-Length: ${Buffer.byteLength(body)}`,
    'Connection: close',
  ];
  socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
}
