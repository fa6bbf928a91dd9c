import { z } from 'zod';
import { jobDocumentSchema } from '../job/document/job-document.ts';

/**
 * The JSON Schema (draft 2020-12) of the job document as people write it.
 *
 * @returns the schema; one `$defs` entry for what a quantity may look like
 */
export function jobJsonSchema(): Record<string, unknown> {
  const definitions: Record<string, unknown> = {};
  const schema = z.toJSONSchema(jobDocumentSchema, {
    io: 'input',
    target: 'draft-2020-12',
    override: ({ jsonSchema }) => {
      if (typeof jsonSchema.description !== 'string' || !jsonSchema.description.startsWith('A quantity: ')) return;
      definitions['quantity'] = { anyOf: jsonSchema.anyOf };
      delete jsonSchema.anyOf;
      jsonSchema.$ref = '#/$defs/quantity';
    },
  });
  const title = 'Standstill job';
  const { $schema, ...rest } = schema;
  return { $schema, $id: 'https://standstill.invalid/schema/job-2.json', title, ...rest, $defs: definitions };
}
