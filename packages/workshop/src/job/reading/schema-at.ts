import { z } from 'zod';
import type { DocumentPath } from './position.ts';

type AnySchema = z.core.$ZodType;

/** The schema that stands at a path of a document, a union's branches not yet chosen; null where there is none. */
export function schemaAt(root: AnySchema, value: unknown, path: DocumentPath): AnySchema | null {
  let schema: AnySchema | null = root;
  let here = value;
  for (const step of path) {
    schema = child(chosen(schema, here), step);
    here = valueAt(here, [step]);
  }
  return schema instanceof z.ZodOptional ? schema.unwrap() : schema;
}

/** The keys that an object at a path may have; none where no object stands there. */
export function keysAt(root: AnySchema, value: unknown, path: DocumentPath): readonly string[] {
  const schema = chosen(schemaAt(root, value, path), valueAt(value, path));
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
}

/** The value at a path; undefined where the path leaves the document. */
export function valueAt(value: unknown, path: DocumentPath): unknown {
  let here = value;
  for (const step of path) {
    const parent = isRecord(here) || Array.isArray(here) ? (here as Record<string | number, unknown>) : {};
    here = Object.hasOwn(parent, step) ? parent[step] : undefined;
  }
  return here;
}

function child(schema: AnySchema | null, step: string | number): AnySchema | null {
  if (schema instanceof z.ZodObject) return (schema.shape as Record<string, AnySchema>)[step] ?? null;
  if (schema instanceof z.ZodRecord) return schema.valueType;
  if (schema instanceof z.ZodArray) return schema.element;
  if (schema instanceof z.ZodTuple) return schema.def.items[Number(step)] ?? null;
  return null;
}

/** Unwraps optionals and takes the branch of a union that the value points at. */
function chosen(schema: AnySchema | null, value: unknown): AnySchema | null {
  if (schema instanceof z.ZodOptional) return chosen(schema.unwrap(), value);
  if (schema instanceof z.ZodDiscriminatedUnion) {
    const key = schema.def.discriminator;
    const kind = isRecord(value) ? value[key] : undefined;
    return schema.options.find((option) => literalOf(option, key) === kind) ?? null;
  }
  if (schema instanceof z.ZodUnion) {
    const objects = schema.options.map((option) => chosen(option, value));
    const matches = (option: AnySchema | null): boolean =>
      Array.isArray(value) ? option instanceof z.ZodArray : isRecord(value) && option instanceof z.ZodObject;
    return objects.find(matches) ?? null;
  }
  return schema;
}

function literalOf(option: AnySchema, key: string): unknown {
  const schema = option instanceof z.ZodObject ? (option.shape as Record<string, AnySchema>)[key] : null;
  return schema instanceof z.ZodLiteral ? schema.value : undefined;
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
