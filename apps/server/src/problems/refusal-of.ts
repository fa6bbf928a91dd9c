import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod';
import { StoreError } from '@standstill/storage';
import type { StoreErrorCode } from '@standstill/storage';
import type { ServerProblemCode } from './problem-codes.ts';
import { RequestRefusal } from './request-refusal.ts';
import { validationProblems } from './validation-problems.ts';

/** How the store's troubles look from outside. */
const ofStore: Readonly<Record<StoreErrorCode, ServerProblemCode>> = {
  'store-unreachable': 'store-unavailable',
  'store-not-a-database': 'store-unavailable',
  'store-newer-than-program': 'store-unavailable',
  'store-migration-changed': 'store-unavailable',
  'store-migration-failed': 'store-unavailable',
  'store-busy': 'store-unavailable',
  'store-full': 'store-full',
  'store-read-only': 'store-unavailable',
  'store-text-refused': 'text-refused',
  'store-hash-mismatch': 'internal-error',
  'store-log-damaged': 'log-damaged',
};

/** How the framework's own refusals look from outside, by its code. */
const ofFramework: Readonly<Record<string, ServerProblemCode>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: 'body-too-large',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'media-type-unsupported',
};

/**
 * Answers what to tell the caller about an error, whatever threw it.
 *
 * @param error - what was thrown
 * @returns the refusal; an error that nobody foresaw becomes `internal-error` without a word of its own
 */
export function refusalOf(error: unknown): RequestRefusal {
  if (error instanceof RequestRefusal) return error;
  if (error instanceof StoreError) return ofStoreError(error);
  if (hasZodFastifySchemaValidationErrors(error)) return ofValidation(error);
  const { code, statusCode, message } = fieldsOf(error);
  const known = ofFramework[code];
  if (known !== undefined) return new RequestRefusal(known, `${message}.`);
  if (statusCode >= 400 && statusCode < 500) return new RequestRefusal('request-malformed', `${message}.`);
  return new RequestRefusal(
    'internal-error',
    'Nothing is known to be lost. The server’s log has the reason under this request id.',
  );
}

function ofStoreError(error: StoreError): RequestRefusal {
  const headers = error.code === 'store-busy' ? { 'retry-after': '1' } : {};
  return new RequestRefusal(ofStore[error.code], error.message, { headers });
}

function ofValidation(error: Parameters<typeof validationProblems>[0]): RequestRefusal {
  const problems = validationProblems(error);
  return new RequestRefusal('request-invalid', problems.map(({ message }) => `${message}.`).join(' '), {
    problems,
  });
}

function fieldsOf(error: unknown): { code: string; statusCode: number; message: string } {
  const fields = typeof error === 'object' && error !== null ? (error as Record<string, unknown>) : {};
  const message =
    typeof fields['message'] === 'string' ? fields['message'].replace(/\.$/, '') : 'The request failed';
  const code = typeof fields['code'] === 'string' ? fields['code'] : '';
  return { code, statusCode: typeof fields['statusCode'] === 'number' ? fields['statusCode'] : 500, message };
}
