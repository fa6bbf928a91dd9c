import type { Finding } from './finding.ts';
import type { DocumentPath } from './position.ts';
import { isRecord } from './schema-at.ts';

/** Keys that JavaScript treats as magic: a schema drops them without a word, so they are refused by name. */
export function forbiddenKeys(value: unknown, path: DocumentPath): Finding[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => forbiddenKeys(item, [...path, index]));
  if (!isRecord(value)) return [];
  return Object.keys(value).flatMap((key) =>
    key === '__proto__' ? [forbidden([...path, key])] : forbiddenKeys(value[key], [...path, key]),
  );
}

function forbidden(path: DocumentPath): Finding {
  const message = '"__proto__" can\'t be used as a key; choose another name';
  return {
    code: 'unknown-key',
    path,
    at: 'key',
    found: 'key "__proto__"',
    accepted: 'another name',
    message,
  };
}
