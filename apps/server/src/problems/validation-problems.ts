import type { FastifyError } from 'fastify';
import type { Problem } from '@standstill/workshop';

/** As the framework hands over what a schema found wrong with a part of the request. */
export type ValidationError = Pick<FastifyError, 'validation' | 'validationContext'>;

/**
 * Names each part of a request that its schema refuses.
 *
 * @param error - what the framework threw
 * @returns one problem for each part, its path starting with where it stands: `query.name`, `body.before.0`
 */
export function validationProblems({ validation, validationContext }: ValidationError): readonly Problem[] {
  const place = placeNames[validationContext ?? ''] ?? 'request';
  return (validation ?? []).map(({ instancePath, message, params }) => {
    const inside = instancePath.split('/').filter((step) => step !== '');
    const path = [place, ...inside].join('.');
    const accepted = lowered(message ?? 'something else');
    const found = typeof params['received'] === 'string' ? params['received'] : 'what was sent';
    return {
      code: 'request-invalid',
      file: null,
      line: null,
      column: null,
      path,
      found,
      accepted,
      message: `${path}: ${accepted}`,
    };
  });
}

const placeNames: Readonly<Record<string, string>> = {
  querystring: 'query',
  params: 'path',
  body: 'body',
  headers: 'headers',
};

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
