import { expect, test } from 'vitest';
import { serverUnderTest } from '../server.testing.ts';

interface Operation {
  readonly operationId?: string;
  readonly requestBody?: unknown;
  readonly responses: Record<string, { readonly content?: Record<string, unknown> }>;
}
interface Description {
  readonly openapi: string;
  readonly paths: Record<string, Record<string, Operation>>;
  readonly components: { readonly schemas: Record<string, unknown> };
}

const bodyOf = (operation: Operation | undefined) =>
  (operation?.requestBody as { content: Record<string, { schema: unknown }> } | undefined)?.content ?? {};

async function describe(): Promise<Description> {
  const server = await serverUnderTest();
  const answer = await server.app.inject('/api/openapi.json');
  await server.stop();
  return answer.json<Description>();
}

test('the description has every request of the API and no other', async () => {
  const { openapi, paths } = await describe();
  const requests = Object.entries(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method} ${path}`),
  );
  expect(openapi).toBe('3.1.0');
  expect(requests.sort()).toEqual(
    [
      'get /api/health',
      'get /api/jobs',
      'post /api/jobs',
      'get /api/jobs/{id}',
      'put /api/jobs/{id}',
      'get /api/jobs/{id}/versions',
      'get /api/jobs/{id}/logs',
      'post /api/jobs/{id}/logs',
      'get /api/jobs/{id}/logs/{logId}',
      'get /api/jobs/{id}/logs/{logId}/report',
      'post /api/predictions',
      'post /api/limits',
      'post /api/heat',
      'post /api/pedal',
      'post /api/balance',
      'post /api/simulate',
      'post /api/comparisons',
      'post /api/fades',
      'post /api/plans',
      'post /api/explanations',
    ].sort(),
  );
});

test('every operation has a name of its own and says how it refuses', async () => {
  const { paths } = await describe();
  const operations = Object.values(paths).flatMap((methods) => Object.values(methods));
  const names = operations.map(({ operationId }) => operationId);
  expect(new Set(names).size).toBe(operations.length);
  for (const { operationId, responses } of operations)
    for (const range of ['4XX', '5XX'])
      expect([operationId, range, ...Object.keys(responses[range]?.content ?? {})]).toEqual([
        operationId,
        range,
        'application/problem+json',
      ]);
});

test('every reference leads somewhere, and the large schemas are named once', async () => {
  const description = await describe();
  const references = [...JSON.stringify(description).matchAll(/"\$ref":"([^"]+)"/g)].map(
    (match) => match[1] ?? '',
  );
  expect(references.length).toBeGreaterThan(20);
  for (const reference of references) {
    const steps = reference.replace(/^#\//, '').split('/');
    const target = steps.reduce<unknown>(
      (here, step) => (here as Record<string, unknown> | undefined)?.[step],
      description,
    );
    expect([reference, target]).not.toContain(undefined);
  }
  expect(Object.keys(description.components.schemas)).toEqual(
    expect.arrayContaining([
      'Prediction',
      'LogReport',
      'Comparison',
      'HeatReport',
      'BalanceReport',
      'SimulationReport',
    ]),
  );
});

test('requests say what they take: documents as JSON or YAML, files, and the version that was changed', async () => {
  const { paths, components } = await describe();
  const document = { schema: { $ref: '#/components/schemas/JobDocumentInput' } };
  expect(bodyOf(paths['/api/jobs']?.['post'])).toEqual({
    'application/json': document,
    'application/yaml': document,
  });
  expect(Object.keys(bodyOf(paths['/api/jobs/{id}/logs']?.['post']))).toContain('application/octet-stream');
  expect(JSON.stringify(paths['/api/jobs/{id}']?.['put'])).toContain('"name":"if-match"');
  expect(Object.keys(components.schemas)).not.toContain('PredictionInput');
});

test('a question of a job says which options it takes, from the schema that holds a request to them', async () => {
  const { paths } = await describe();
  const taken = (path: string): unknown => {
    const body = bodyOf(paths[path]?.['post'])['application/json']?.schema;
    const { properties } = body as { properties: { options: { properties: Record<string, object> } } };
    return properties.options.properties;
  };
  expect(taken('/api/heat')).toMatchObject({
    schedule: { enum: expect.arrayContaining(['stops', 'laps', 'descent']) as unknown },
    drop_m: { minimum: 1, maximum: 6000 },
    draws: { maximum: 1000 },
  });
  expect(taken('/api/balance')).toMatchObject({ draws: { maximum: 5000 }, states: { type: 'array' } });
  expect(taken('/api/simulate')).toMatchObject({ draws: { maximum: 1000 }, trace: { type: 'boolean' } });
});
