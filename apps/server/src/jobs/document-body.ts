import type { FastifySchemaCompiler } from 'fastify';
import { validatorCompiler } from 'fastify-type-provider-zod';
import type { z } from 'zod';
import type { App } from '../app.ts';
import { YamlBody } from './read-document.ts';

/**
 * Leaves the body of a route to the workshop's reader, which names mistakes better than a schema can; the rest of the
 * request is held to its schema.
 *
 * @param route - a part of a request and its schema
 * @returns what checks that part
 */
export const bodyToReader: FastifySchemaCompiler<unknown> = (route) =>
  route.httpPart === 'body'
    ? (value: unknown) => ({ value })
    : validatorCompiler({ ...route, schema: route.schema as z.ZodType });

/** Lets job documents come as YAML too. */
export function acceptYaml(app: App): void {
  const types = ['application/yaml', 'application/x-yaml', 'text/yaml'];
  app.addContentTypeParser(types, { parseAs: 'string' }, (_request, text, done) => {
    done(null, new YamlBody(String(text)));
  });
}
