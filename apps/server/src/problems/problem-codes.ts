/**
 * Every way the server refuses or fails: the code ends the problem's `type`, the status and the title never change
 * with the occasion. Listed with advice in docs/errors.md.
 */
export const serverProblems = {
  'request-malformed': { status: 400, title: 'The request can not be read' },
  'request-invalid': { status: 400, title: 'A part of the request is not what is accepted' },
  'upload-incomplete': { status: 400, title: 'The upload broke off' },
  'version-not-understood': { status: 400, title: 'If-Match does not name one version' },
  'origin-refused': { status: 403, title: 'Another web page may not change anything here' },
  'route-not-found': { status: 404, title: 'There is nothing at this address' },
  'job-not-found': { status: 404, title: 'There is no such job' },
  'log-not-found': { status: 404, title: 'The job has no such log' },
  'app-not-built': { status: 404, title: 'The app has not been built' },
  'job-exists': { status: 409, title: 'A job with this id exists' },
  'version-changed': { status: 412, title: 'Someone changed the job in between' },
  'body-too-large': { status: 413, title: 'The upload is too large' },
  'media-type-unsupported': { status: 415, title: 'The body is of a kind that is not accepted' },
  'host-refused': { status: 421, title: 'The server does not answer to this name' },
  'job-invalid': { status: 422, title: 'The job has mistakes' },
  'log-not-usable': { status: 422, title: 'A log can not be used' },
  'nothing-to-draw': { status: 422, title: 'The answer has no picture' },
  'text-refused': { status: 422, title: 'A text holds a character that can not be kept' },
  'version-required': { status: 428, title: 'Say which version you changed' },
  'internal-error': { status: 500, title: 'The server failed' },
  'log-damaged': { status: 500, title: 'The kept bytes of the log have changed' },
  'store-unavailable': { status: 503, title: 'The database can not be used now' },
  'calculation-too-heavy': { status: 503, title: 'The calculation took too long or too much memory' },
  'server-stopping': { status: 503, title: 'The server is stopping' },
  'store-full': { status: 507, title: 'The disk is full' },
} as const;

export type ServerProblemCode = keyof typeof serverProblems;
