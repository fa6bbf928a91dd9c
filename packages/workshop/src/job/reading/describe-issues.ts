import { z } from 'zod';
import { partSlots } from '../document/part-slots.ts';
import type { PartSlot } from '../document/part-slots.ts';
import { slotTakes } from '../resolve/unknown-part.ts';
import type { Finding } from './finding.ts';
import { nearestWord } from './nearest-word.ts';
import { pathText } from './path-text.ts';
import type { DocumentPath } from './position.ts';
import type { JobProblemCode } from './problem-codes.ts';
import { keysAt, schemaAt, valueAt } from './schema-at.ts';
import { shown } from './shown.ts';

type Issue = z.core.$ZodIssue;

/** Turns what the schema found wrong into one plain sentence per mistake. */
export function describeIssues(schema: z.core.$ZodType, root: unknown, issues: readonly Issue[]): Finding[] {
  const found = issues.flatMap((issue) => describe({ schema, root }, issue, []));
  return withoutCascades(found);
}

interface Scene {
  readonly schema: z.core.$ZodType;
  readonly root: unknown;
}

function describe(scene: Scene, issue: Issue, prefix: DocumentPath): Finding[] {
  const path = [...prefix, ...issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step))];
  const value = valueAt(scene.root, path);
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(scene, path, key));
  if (issue.code === 'invalid_key') return [badId(path)];
  if (value === undefined || value === null) return [missing(scene, path)];
  if (issue.code === 'custom') return [custom(issue, path)];
  if (issue.code === 'invalid_value') return [unknownChoice(path, value, issue.values.map(String))];
  if (issue.code === 'invalid_union') return union(scene, issue, path);
  if (issue.code === 'too_big' || issue.code === 'too_small') return [outOfRange(issue, path, value)];
  if (issue.code === 'invalid_format') return [badId(path)];
  return [wrongKind(scene, path, value, issue.code === 'invalid_type' ? issue.expected : undefined)];
}

function unknownKey(scene: Scene, path: DocumentPath, key: string): Finding {
  const keys = keysAt(scene.schema, scene.root, path);
  const near = nearestWord(key, keys);
  const accepted = near === null ? list(keys) : near;
  const hint = near === null ? `known here: ${list(keys)}` : `did you mean "${near}"?`;
  const where = pathText(path) === '' ? '' : ` in ${pathText(path)}`;
  const message = `"${key}" is not a key known${where === '' ? ' at the top of a job' : where}; ${hint}`;
  return { code: 'unknown-key', path: [...path, key], at: 'key', found: `key "${key}"`, accepted, message };
}

function missing(scene: Scene, path: DocumentPath): Finding {
  const accepted = whatIsAccepted(scene, path);
  const empty = valueAt(scene.root, path) === null;
  const message = `${pathText(path)} is ${empty ? 'empty' : 'missing'}; give ${accepted}`;
  return { code: 'missing', path, at: 'key', found: 'nothing', accepted, message };
}

function custom(issue: z.core.$ZodIssueCustom, path: DocumentPath): Finding {
  const params = issue.params as { code: JobProblemCode; found: string; accepted: string; message: string };
  const { code, found, accepted } = params;
  return { code, path, at: 'value', found, accepted, message: `${pathText(path)} ${params.message}` };
}

function unknownChoice(path: DocumentPath, value: unknown, choices: readonly string[]): Finding {
  const near = typeof value === 'string' ? nearestWord(value, choices) : null;
  const accepted = list(choices);
  const hint = near === null ? `accepted: ${accepted}` : `did you mean "${near}"? Accepted: ${accepted}`;
  const message = `${pathText(path)} is ${shown(value)}; ${hint}`;
  return { code: 'unknown-choice', path, at: 'value', found: shown(value), accepted, message };
}

/** Of a union's branches, the one whose outer kind fits is the one that the person meant. */
function union(scene: Scene, issue: z.core.$ZodIssueInvalidUnion, path: DocumentPath): Finding[] {
  const options = (issue as { options?: readonly unknown[] }).options;
  if (options !== undefined) return [unknownChoice(path, valueAt(scene.root, path), options.map(String))];
  const meant = issue.errors.find((branch) => branch.length > 0 && !branch.some(isOuterKind));
  if (meant !== undefined) return meant.flatMap((inner) => describe(scene, inner, path));
  return [wrongKind(scene, path, valueAt(scene.root, path), undefined)];
}

function isOuterKind(issue: Issue): boolean {
  return issue.path.length === 0 && (issue.code === 'invalid_type' || issue.code === 'invalid_union');
}

function outOfRange(
  issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall,
  path: DocumentPath,
  value: unknown,
): Finding {
  const bound =
    issue.code === 'too_big' ? `at most ${String(issue.maximum)}` : `at least ${String(issue.minimum)}`;
  const counted = issue.origin === 'array' ? ' entries' : issue.origin === 'string' ? ' characters' : '';
  const size = Array.isArray(value) || typeof value === 'string' ? value.length : value;
  const message = `${pathText(path)} has ${String(size)}${counted}; accepted is ${bound}`;
  const plain = counted === '' ? `${pathText(path)} is ${String(size)}; accepted is ${bound}` : message;
  return {
    code: 'out-of-range',
    path,
    at: 'value',
    found: `${String(size)}${counted}`,
    accepted: bound,
    message: plain,
  };
}

function badId(path: DocumentPath): Finding {
  const accepted = 'small letters, digits and hyphens, such as front-kit';
  const found = `"${String(path.at(-1))}"`;
  const message = `${pathText(path)}: an id is made of ${accepted}`;
  return { code: 'wrong-kind', path, at: 'key', found, accepted, message };
}

function wrongKind(scene: Scene, path: DocumentPath, value: unknown, expected: string | undefined): Finding {
  const accepted = slotWords(path) ?? kindNames[expected ?? ''] ?? whatIsAccepted(scene, path);
  const message = `${path.length === 0 ? 'the document' : pathText(path)} is ${shown(value)}; accepted is ${accepted}`;
  return { code: 'wrong-kind', path, at: 'value', found: shown(value), accepted, message };
}

/** What a slot of a set-up takes; null for all other paths. */
function slotWords([root, , slot, ...deeper]: DocumentPath): string | null {
  const isSlot = root === 'setUps' && typeof slot === 'string' && Object.hasOwn(partSlots, slot);
  return isSlot && deeper.length === 0 ? slotTakes(slot as PartSlot) : null;
}

const kindNames: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
};

/** What a person may write at a path, by the schema's own title and example. */
function whatIsAccepted(scene: Scene, path: DocumentPath): string {
  const schema = schemaAt(scene.schema, scene.root, path);
  const about = schema === null ? undefined : z.globalRegistry.get(schema);
  const example = Object.values(about?.examples ?? {})[0];
  if (about?.title !== undefined && example !== undefined)
    return `the ${lowered(about.title)}, such as ${String(example)}`;
  if (schema instanceof z.ZodString) return 'text';
  if (schema instanceof z.ZodArray) return 'a list';
  if (schema instanceof z.ZodEnum) return list(schema.options.map(String));
  if (schema instanceof z.ZodLiteral) return String(schema.value);
  if (schema instanceof z.ZodUnion && !(schema instanceof z.ZodDiscriminatedUnion))
    return 'a number or a table of pairs';
  return 'a block of "key: value" lines';
}

function lowered(title: string): string {
  return /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

function list(words: readonly string[]): string {
  return words.join(', ');
}

/** A key typed wrong also leaves the right one missing: that is one mistake, told once. */
function withoutCascades(findings: readonly Finding[]): Finding[] {
  const meant = new Set(
    findings
      .filter((one) => one.code === 'unknown-key')
      .map((one) => pathText([...one.path.slice(0, -1), one.accepted])),
  );
  return findings.filter((one) => one.code !== 'missing' || !meant.has(pathText(one.path)));
}
