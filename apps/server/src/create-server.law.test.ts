import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { jobDocument, makeJob, serverUnderTest } from './server.testing.ts';
import type { ServerUnderTest } from './server.testing.ts';

type Method = 'GET' | 'HEAD' | 'POST' | 'PUT' | 'PATCH' | 'DELETE' | 'OPTIONS';

let server: ServerUnderTest;
let id: string;
beforeAll(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
  await server.app.inject({
    method: 'POST',
    url: `/api/jobs/${id}/logs?name=a.csv`,
    payload: 'time,speed\n0,1\n',
  });
});
afterAll(() => server.stop());

const anyText = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.string({ unit: 'grapheme' }),
  fc.constantFrom('\0', '..', '%', '%00', '__proto__', ' '),
);
const segment = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.constantFrom(
      'jobs',
      'logs',
      'report',
      'versions',
      'predictions',
      'comparisons',
      'heat',
      'balance',
      'simulate',
      'health',
      'id-2',
      'openapi.json',
      '..',
    ),
  },
  { weight: 1, arbitrary: anyText.map((text) => encodeURIComponent(text.replace(/\p{Surrogate}/gu, '?'))) },
  { weight: 1, arbitrary: fc.stringMatching(/^[\x21-\x7e]{0,40}$/) },
);
const query = fc.oneof(
  fc.constant(''),
  fc.stringMatching(/^[\x21-\x7e]{0,60}$/).map((text) => `?${text}`),
  fc.constantFrom('?name=a.csv', '?speed_m_s=1e400', '?name=%ff', '?name=a&units=us'),
);
const url = fc
  .tuple(
    fc.constantFrom('/api/', '/api/', '/api/', '/', '/problems/', '//'),
    fc.array(segment, { maxLength: 5 }),
    query,
  )
  .map(([start, segments, end]) => `${start}${segments.join('/')}${end}`);

const headerValue = fc.stringMatching(/^[\x20-\x7e]{0,60}$/);
const anyHeaders = fc.record(
  {
    'content-type': fc.oneof(
      fc.constantFrom(
        'application/json',
        'application/yaml',
        'text/csv',
        'multipart/form-data',
        'application/octet-stream',
      ),
      headerValue,
    ),
    'if-match': fc.oneof(fc.constantFrom('"1"', '*', '"0"', 'W/"1"', '"999999999999999"'), headerValue),
    'if-none-match': headerValue,
    accept: headerValue,
    'accept-encoding': headerValue,
    'content-encoding': fc.constantFrom('gzip', 'identity', 'br'),
    range: headerValue,
    origin: fc.constantFrom('http://localhost:80', 'null', 'http://evil.example'),
  },
  { requiredKeys: [] },
);

const request = { document: jobDocument(), jobId: 'id-2', before: ['id-4'], after: ['id-4'] };
const mutated = fc
  .tuple(
    fc.constantFrom(JSON.stringify(request), JSON.stringify(jobDocument())),
    fc.nat(),
    fc.string({ unit: 'binary', maxLength: 4 }),
  )
  .map(
    ([text, place, noise]) =>
      text.slice(0, place % text.length) + noise + text.slice((place % text.length) + noise.length),
  );
const payload = fc.oneof(
  fc.json({ maxDepth: 6 }),
  mutated,
  fc.uint8Array({ maxLength: 2000 }).map((bytes) => Buffer.from(bytes)),
  fc.constantFrom('', '{}', 'null', '[[[[', '{"a":1e999}', `{"jobId":"${'x'.repeat(5000)}"}`),
);

const method = fc.constantFrom<Method>('GET', 'HEAD', 'POST', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS');

test('no request whatever makes the server fail, and every refusal is a problem document', async () => {
  let refused = 0;
  await fc.assert(
    fc.asyncProperty(method, url, anyHeaders, payload, async (verb, address, fields, body) => {
      const answer = await server.app.inject({
        method: verb,
        url: address,
        headers: fields,
        ...(verb === 'GET' || verb === 'HEAD' ? {} : { payload: body }),
      });
      if (answer.statusCode >= 500) throw new Error(answer.body);
      if (answer.statusCode < 400) return;
      refused += 1;
      expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
      if (verb === 'HEAD') return;
      expect(answer.json()).toMatchObject({
        status: answer.statusCode,
        type: expect.stringMatching(/^\/problems\//) as string,
      });
    }),
    { numRuns: 400 },
  );
  expect(refused).toBeGreaterThan(100);
  expect((await server.app.inject(`/api/jobs/${id}`)).statusCode).toBe(200);
});

test('a log is given back as the bytes that came in, whatever they are', async () => {
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 4000 }), async (bytes) => {
      const headers = { 'content-type': 'application/octet-stream' };
      const up = await server.app.inject({
        method: 'POST',
        url: `/api/jobs/${id}/logs?name=x.bin`,
        payload: Buffer.from(bytes),
        headers,
      });
      const back = await server.app.inject(`/api/jobs/${id}/logs/${up.json<{ id: string }>().id}`);
      expect([...back.rawPayload]).toEqual([...bytes]);
    }),
    { numRuns: 60 },
  );
});

/** Replaces one value somewhere in a document. */
function replaceOne(document: unknown, place: number, value: unknown): unknown {
  let leaves = 0;
  const count = (node: unknown): void => {
    if (typeof node === 'object' && node !== null) Object.values(node).forEach(count);
    else leaves += 1;
  };
  count(document);
  let left = place % leaves;
  const copy = (node: unknown): unknown => {
    if (Array.isArray(node)) return node.map(copy);
    if (typeof node === 'object' && node !== null)
      return Object.fromEntries(Object.entries(node).map(([key, inner]) => [key, copy(inner)]));
    left -= 1;
    return left === -1 ? value : node;
  };
  return copy(document);
}

const badValue = fc.oneof(
  fc.constantFrom(
    '',
    '0',
    '-1',
    '1e308 m',
    '1e-308 kg',
    '0 in',
    '200 %',
    '-40 °C',
    '1e9 lbf',
    'NaN',
    'Infinity m',
    null,
    true,
    [],
    {},
    0,
    -1,
    1e308,
  ),
  fc
    .tuple(
      fc.double({ noNaN: true }),
      fc.constantFrom('m', 'kg', 'mm', 'in', 'lbf', 'psi', '%', 'mph', '°F', 'mm²', 'N·m', ''),
    )
    .map(([size, unit]) => `${size} ${unit}`),
  fc.string(),
);

test('no value in a job whatever makes a prediction fail without saying why', async () => {
  let predicted = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.nat(),
      badValue,
      fc.record(
        { speed_m_s: fc.double({ min: 0.1, max: 150 }), pedalForce_N: fc.double({ min: 0.1, max: 5000 }) },
        { requiredKeys: [] },
      ),
      async (place, value, options) => {
        const document = replaceOne(jobDocument(), place, value);
        const answer = await server.app.inject({
          method: 'POST',
          url: '/api/predictions',
          payload: { document, options: { draws: 2, ...options } },
        });
        if (answer.statusCode >= 500)
          throw new Error(JSON.stringify({ place, value, options, body: answer.body }));
        if (answer.statusCode === 200) predicted += 1;
      },
    ),
    { numRuns: 150 },
  );
  expect(predicted).toBeGreaterThan(5);
});
