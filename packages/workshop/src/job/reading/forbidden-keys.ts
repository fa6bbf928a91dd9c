import type { Finding } from './finding.ts';
import type { DocumentPath } from './position.ts';
import { isRecord } from './schema-at.ts';

/** Deeper than any job; what nests deeper would overflow the stack of whoever walks it. */
const deepest = 40;

/**
 * What no schema can be asked about: keys that JavaScript treats as magic (a schema drops them without a word), and
 * values nested without end.
 *
 * @param value - plain values from anywhere
 * @param path - where they stand
 * @returns one finding each
 */
export function forbiddenKeys(value: unknown, path: DocumentPath): Finding[] {
  if (path.length > deepest) return [tooDeep(path)];
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

function tooDeep(path: DocumentPath): Finding {
  const message = 'the values nest deeper than any job does; is this a job?';
  const first = path.slice(0, 1);
  return {
    code: 'job-too-deep',
    path: first,
    at: 'key',
    found: 'values nested too deep',
    accepted: 'a job document',
    message,
  };
}
