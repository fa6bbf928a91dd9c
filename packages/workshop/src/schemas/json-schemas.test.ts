import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { exampleJobText } from '../job/example-job.testing.ts';
import { newJobText } from '../job/new-job-text.ts';
import { jobJsonSchema } from './job-json-schema.ts';
import { resultJsonSchema, resultKinds } from './result-json-schema.ts';

/** The published schema read back by the other direction of the library: independent of our own schema objects. */
function accepts(schema: Record<string, unknown>, value: unknown): boolean {
  return z.fromJSONSchema(schema).safeParse(value).success;
}

describe('the JSON Schema of the job', () => {
  const schema = jobJsonSchema();

  it.each([
    ['the example', exampleJobText],
    ['a new job', newJobText('New')],
  ])('accepts %s', (_name, text) => {
    expect(accepts(schema, parse(text))).toBe(true);
  });

  it.each([
    ['an unknown key', 'wheelbase:', 'wheelbse:'],
    ['an unknown kind', 'kind: tire', 'kind: tyre'],
    ['a list for a length', 'wheelbase: 96 in', 'wheelbase: [96]'],
    ['an unknown origin', 'origin: measured', 'origin: guessed'],
  ])('refuses %s', (_name, good, bad) => {
    expect(accepts(schema, parse(exampleJobText.replace(good, bad)))).toBe(false);
  });

  it('is draft 2020-12 and says once what a quantity may look like', () => {
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(Object.keys(schema['$defs'] as object)).toEqual(['quantity']);
    expect(JSON.stringify(schema).match(/"\$ref":"#\/\$defs\/quantity"/g)?.length).toBeGreaterThan(80);
  });
});

describe('the JSON Schemas of the results', () => {
  it.each(resultKinds)('%s is there, and refuses an empty object', (kind) => {
    const schema = resultJsonSchema(kind);
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(accepts(schema, {})).toBe(false);
  });
});
