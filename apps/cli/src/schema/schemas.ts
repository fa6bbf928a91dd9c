import { jobJsonSchema, resultJsonSchema, resultKinds } from '@standstill/workshop';

type Schema = Readonly<Record<string, unknown>>;

/** Every published shape by name: the job document, the workshop's results, and what only the command line prints. */
export function schemas(): Readonly<Record<string, () => Schema>> {
  return {
    job: jobJsonSchema,
    ...Object.fromEntries(resultKinds.map((kind) => [kind, () => resultJsonSchema(kind)])),
    stops: () => logs('stops'),
    channels: () => logs('channels'),
    check,
    'new-job': newJob,
    serving,
  };
}

const dialect = 'https://json-schema.org/draft/2020-12/schema';

/** `stops --json` and `channels --json`: one entry a log, in the order of the command. */
function logs(title: string): Schema {
  return {
    $schema: dialect,
    title,
    type: 'array',
    items: { oneOf: [resultJsonSchema('log-report'), resultJsonSchema('log-refusal')] },
  };
}

/** `check --json`. */
function check(): Schema {
  return record('check', {
    files: {
      type: 'array',
      items: {
        type: 'object',
        properties: {
          file: { type: 'string' },
          sound: { type: 'boolean' },
          problems: { type: 'array', items: resultJsonSchema('problem') },
          assumed: { type: 'array', items: assumedItem() },
        },
        required: ['file', 'sound', 'problems', 'assumed'],
        additionalProperties: false,
      },
    },
  });
}

/** The prediction lists the same records. */
function assumedItem(): unknown {
  const { properties } = resultJsonSchema('prediction');
  const assumed: unknown = Reflect.get(Object(properties), 'assumed');
  return Reflect.get(Object(assumed), 'items');
}

/** `new --json`. */
function newJob(): Schema {
  return record('new-job', { file: { type: 'string' } });
}

/** `serve --json`: one line as soon as it listens. */
function serving(): Schema {
  return record('serving', { address: { type: 'string' } });
}

function record(kind: string, properties: Schema): Schema {
  return {
    $schema: dialect,
    title: kind,
    type: 'object',
    properties: { kind: { const: kind }, version: { const: 1 }, ...properties },
    required: ['kind', 'version', ...Object.keys(properties)],
    additionalProperties: false,
  };
}
