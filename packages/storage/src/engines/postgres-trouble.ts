import { StoreError } from '../errors/store-error.ts';

const networkCodes = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'ENOTFOUND',
  'EAI_AGAIN',
  'ETIMEDOUT',
  'EPIPE',
  'ENOENT',
]);
const disconnection = /connection terminated|timeout exceeded when trying to connect|not queryable/i;

/**
 * Says in our words what PostgreSQL or the way to it reported; anything unknown is passed on as it is. The classes
 * are those of the SQLSTATE table in PostgreSQL's manual.
 *
 * @param error - what was thrown
 * @param server - host and database without the password, for the sentence
 * @returns the error to throw
 */
export function postgresTrouble(error: unknown, server: string): unknown {
  const code = postgresCode(error);
  const message = error instanceof Error ? error.message : '';
  if (code === '53100') return new StoreError('store-full', `The disk of ${server} is full.`, error);
  if (code === '25006') return new StoreError('store-read-only', `${server} is read-only.`, error);
  if (code === '55P03' || code === '40P01' || code === '40001')
    return new StoreError('store-busy', `${server} is busy. Try again in a moment.`, error);
  if (isUnreachable(code, message))
    return new StoreError(
      'store-unreachable',
      `${server} can't be used: ${firstLine(message, code)}.`,
      error,
    );
  return error;
}

/** 08: connection; 28: not let in; 3D: no such database; 53: out of resources; 57P: shutting down. */
function isUnreachable(code: string, message: string): boolean {
  return networkCodes.has(code) || /^(08|28|3D|53|57P)/.test(code) || disconnection.test(message);
}

function firstLine(message: string, code: string): string {
  const line = message.split('\n')[0] ?? '';
  return line === '' ? code : line.replace(/\.$/, '');
}

function postgresCode(error: unknown): string {
  if (error instanceof AggregateError) return postgresCode(error.errors[0]);
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return '';
  return error.code;
}
