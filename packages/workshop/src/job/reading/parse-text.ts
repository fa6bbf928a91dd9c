import { LineCounter, parseDocument, visit } from 'yaml';
import type { Document, YAMLError } from 'yaml';
import type { Finding } from './finding.ts';
import { locateInYaml } from './locate-in-yaml.ts';
import type { Locate, Position } from './position.ts';
import { tooDeep } from './too-deep.ts';

const greatestLength = 2_000_000;

/** A finding in the text itself, before there are any values. */
export interface TextFinding extends Finding {
  readonly position: Position;
}

export type ParsedText =
  | { readonly ok: true; readonly value: unknown; readonly locate: Locate }
  | { readonly ok: false; readonly findings: readonly TextFinding[] };

/** Turns YAML or JSON into plain values that know where they stand in the text. */
export function parseText(text: string, format: 'yaml' | 'json'): ParsedText {
  const lines = new LineCounter();
  const at = (offset: number): Position => place(text, offset);
  if (text.length > greatestLength) return refuse(tooLarge(text.length));
  const depth = tooDeep(text);
  if (depth !== null) return refuse(tooDeepFinding(at(depth)));
  const strict = format === 'json' ? jsonTrouble(text) : null;
  if (strict !== null) return refuse({ ...strict.finding, position: at(strict.offset) });
  const document = parseDocument(text, {
    lineCounter: lines,
    prettyErrors: false,
    logLevel: 'error',
    stringKeys: true,
  });
  const findings = [...troubles(document, at), ...aliases(document, at)];
  if (findings.length > 0) return { ok: false, findings };
  return { ok: true, value: document.toJS(), locate: locateInYaml(document, lines) };
}

function refuse(finding: TextFinding): ParsedText {
  return { ok: false, findings: [finding] };
}

/** Duplicate keys are told one by one; of syntax errors only the first, since the rest follow from it. */
function troubles(document: Document, at: (offset: number) => Position): TextFinding[] {
  const errors: readonly YAMLError[] = [...document.errors].sort((a, b) => a.pos[0] - b.pos[0]);
  const other = errors.find((error) => error.code !== 'DUPLICATE_KEY');
  if (other !== undefined) return [syntaxFinding(other, at(other.pos[0]))];
  return errors.map((error) => ({ ...duplicateKey, position: at(error.pos[0]) }));
}

function aliases(document: Document, at: (offset: number) => Position): TextFinding[] {
  let first: number | null = null;
  visit(document, {
    Alias(_key, node) {
      first = node.range?.[0] ?? 0;
      return visit.BREAK;
    },
  });
  return first === null ? [] : [{ ...alias, position: at(first) }];
}

const text = { path: [], at: 'value' } as const;

const duplicateKey: Finding = {
  ...text,
  code: 'job-duplicate-key',
  found: 'a key that is already there',
  accepted: 'each key once',
  message: 'this key is already given above; keep one of the two',
};

const alias: Finding = {
  ...text,
  code: 'job-alias',
  found: 'an alias (*name)',
  accepted: 'values written out',
  message: 'aliases (*name) are not read; write the value out where it is used',
};

function tooLarge(length: number): TextFinding {
  const found = `${(length / 1e6).toFixed(1)} million characters`;
  const accepted = `at most ${greatestLength / 1e6} million`;
  return {
    ...text,
    code: 'job-too-large',
    found,
    accepted,
    message: `the file has ${found}; a job has ${accepted}. Is it a log? Logs are kept beside the job`,
    position: { line: null, column: null },
  };
}

function tooDeepFinding(position: Position): TextFinding {
  const message = 'the brackets or dashes nest deeper than any job does; is this a job file?';
  return {
    ...text,
    code: 'job-too-deep',
    found: 'values nested too deep',
    accepted: 'a job document',
    message,
    position,
  };
}

function syntaxFinding(error: YAMLError, position: Position): TextFinding {
  if (error.code === 'TAB_AS_INDENT') {
    const message = 'this line is indented with a tab; YAML accepts only spaces there';
    return { ...text, code: 'job-tabs', found: 'a tab', accepted: 'spaces', message, position };
  }
  const why = plainReasons[error.code] ?? error.message.replace(/\s+/g, ' ');
  const message = `the text can't be read as YAML from here: ${why}`;
  return { ...text, code: 'job-syntax', found: why, accepted: 'YAML', message, position };
}

/** What the parser's codes mean to somebody who edits a job. */
const plainReasons: Readonly<Record<string, string>> = {
  BAD_INDENT: 'the indentation does not fit the lines above, or a bracket is left open',
  BLOCK_AS_IMPLICIT_KEY:
    'a second "key: value" stands on one line, or the indentation does not fit the lines above',
  MULTILINE_IMPLICIT_KEY: 'a key must stand on one line; is a bracket, brace or quote left open above?',
  MISSING_CHAR: 'something is left open: a quote, a bracket or the colon after a key',
  MULTIPLE_DOCS: 'a second document starts with ---; a job file holds one',
  BAD_DIRECTIVE: 'a line that starts with % is not understood',
};

function jsonTrouble(source: string): { finding: Finding; offset: number } | null {
  try {
    JSON.parse(source);
    return null;
  } catch (error) {
    const why = error instanceof Error ? error.message : 'not JSON';
    const offset = Number(/position (\d+)/.exec(why)?.[1] ?? (/end of/.test(why) ? source.length : 0));
    const plain = why.replace(/ (?:in JSON )?at position.*$/s, '').replace(/, (?:\.\.\.)?".*$/s, '');
    const message = `the text can't be read as JSON from here: ${plain.charAt(0).toLowerCase()}${plain.slice(1)}`;
    return { finding: { ...text, code: 'job-syntax', found: plain, accepted: 'JSON', message }, offset };
  }
}

function place(source: string, offset: number): Position {
  const before = source.slice(0, offset);
  const line = before.split('\n').length;
  return { line, column: offset - (before.lastIndexOf('\n') + 1) + 1 };
}
