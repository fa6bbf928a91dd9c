import swagger from '@fastify/swagger';
import { createJsonSchemaTransform, createJsonSchemaTransformObject } from 'fastify-type-provider-zod';
import type { App } from '../app.ts';
import { describedSchemas } from './described-schemas.ts';
import { onlyNamedSchemas } from './only-named-schemas.ts';

/** Describes the API (OpenAPI 3.1) from the schemas that its requests and answers are held to. */
export function describeApi(app: App, programVersion: string): void {
  const settings = { schemaRegistry: describedSchemas };
  void app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Standstill',
        version: programVersion,
        description:
          'Jobs, their logs, predictions and comparisons. Numbers carry their unit in their name. Errors are problem documents (RFC 9457).',
        license: { name: 'MIT', identifier: 'MIT' },
      },
    },
    transform: createJsonSchemaTransform(settings),
    transformObject: createJsonSchemaTransformObject(settings),
  });
  app.get('/api/openapi.json', { schema: { hide: true } }, (_request, reply) =>
    reply.send(onlyNamedSchemas(app.swagger())),
  );
}
