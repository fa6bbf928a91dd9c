import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { dependencyPageProblems } from './dependency-page-problems.mjs';
import { docstringProblems } from './docstring-problems.mjs';
import { errorCodeProblems } from './error-code-problems.mjs';
import { linkProblems } from './link-problems.mjs';
import { namesUnit } from './names-unit.mjs';
import { recordProblems } from './record-problems.mjs';
import { roomTableProblems } from './room-table-problems.mjs';
import { sourceKeyProblems } from './source-key-problems.mjs';
import { truthProblems } from './truth-problems.mjs';

const trees: string[] = [];
function tree(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'standstill-docs-'));
  trees.push(folder);
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
afterEach(() => {
  for (const folder of trees.splice(0)) rmSync(folder, { recursive: true });
});

const soundDoc = `/**
 * The torque of one corner.
 *
 * @param force - F, N
 * @param lever - r, effective radius, m
 * @returns T, N·m
 * @example
 * torque(2, 3) // => 6
 */`;
const signature = 'export function torque(force: number, lever: number): number { return force * lever; }';

function docProblems(doc: string, code = signature): readonly string[] {
  const files = { 'p/src/index.ts': `export * from './torque.ts';`, 'p/src/torque.ts': `${doc}\n${code}` };
  return docstringProblems(tree(files), 'p');
}

describe('docstrings', () => {
  it('accepts a whole docstring', () => {
    expect(docProblems(soundDoc)).toEqual([]);
  });

  it.each([
    ['no docstring', '', 'torque has no docstring'],
    ['a plain comment', '// The torque.', 'torque has no docstring'],
    ['a parameter left out', soundDoc.replace(/ \* @param lever.*\n/, ''), 'torque has no @param lever'],
    [
      'a parameter without a unit',
      soundDoc.replace('F, N', 'the force'),
      'torque has @param force without a unit',
    ],
    [
      'a result without a unit',
      soundDoc.replace('T, N·m', 'the torque'),
      'torque has @returns without a unit',
    ],
    ['no result', soundDoc.replace(/ \* @returns.*\n/, ''), 'torque says nothing after @returns'],
    [
      'an example that holds nothing',
      soundDoc.replace(' // => 6', ''),
      'torque has an @example without a "// =>"',
    ],
    [
      'no first sentence',
      soundDoc.replace(' * The torque of one corner.\n *\n', ''),
      'does not begin with a sentence',
    ],
  ])('finds %s', (_title, doc, message) => {
    const problems = docProblems(doc);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain('p/src/torque.ts:');
    expect(problems[0]).toContain(message);
  });

  it('asks for every part of a destructured record', () => {
    const code = 'export const torque = ({ force, lever }: Pair): number => force * lever;';
    expect(docProblems(soundDoc, code)).toEqual([]);
    expect(docProblems(soundDoc.replace('@param lever', '@param arm'), code)).toHaveLength(1);
  });

  it('leaves alone what the index does not pass on', () => {
    const files = { 'p/src/index.ts': 'export {};', 'p/src/torque.ts': signature };
    expect(docstringProblems(tree(files), 'p')).toEqual([]);
  });
});

it.each(['m', 'F, N', 'in `unit`', 'm/s²', 'J/(kg·K)', '0 to 1, share', 'kg m²', 'ρ, kg/m³', 'slip, 1'])(
  'sees the unit in "%s"',
  (text) => {
    expect(namesUnit(text)).toBe(true);
  },
);

it.each(['the force', 'speed of the car', 'a value', 'how hard the foot pushes'])(
  'sees no unit in "%s"',
  (text) => {
    expect(namesUnit(text)).toBe(false);
  },
);

it('finds numbers in records whose unit is told nowhere', () => {
  const code = `
    export interface Wheel {
      /** J, of ONE wheel, kg m². */
      readonly inertia: number;
      /** How big it is. */
      readonly radius: number;
      readonly width_m: number;
      readonly boltCount: number;
      readonly name: string;
    }
    /** Parts of the travel, m. */
    export interface Travel { readonly hoses: number; readonly pads: number }
    interface Own { readonly inside: number }`;
  expect(recordProblems(tree({ 'p/src/a.ts': code }), 'p')).toEqual([
    'p/src/a.ts:6: Wheel.radius has no unit',
  ]);
});

const header = '| key | source | how known |\n|---|---|---|\n';

it('finds source keys that are not listed, twice, unsorted or without saying how they are known', () => {
  const page = `${header}| b | B | read |\n| a | A | from memory |\n| a | A | read |\n| c | C | surely |\n`;
  const code = '/** Source: [b], [nowhere] */\n// Source: [gone]\nconst text = "Source: [text]";';
  const problems = sourceKeyProblems(tree({ 'docs/sources.md': page, 'p/src/a.ts': code }), ['p']);
  expect(problems).toEqual([
    'docs/sources.md:4: a comes after b; keep the keys sorted',
    'docs/sources.md:5: a is there twice',
    'docs/sources.md:6: c does not say how it is known (read, from memory, common practice)',
    `p/src/a.ts:1: source 'nowhere' is not in docs/sources.md`,
    `p/src/a.ts:2: source 'gone' is not in docs/sources.md`,
  ]);
});

it('finds error codes that the page lacks and codes that the source lacks', () => {
  const code = `
    export const rowCodes = ['bad-row'] as const;
    export interface Flag { readonly code: 'gentle' | 'poor-fix' }
    class E extends Error { readonly code = 'out-of-range'; }
    const issue = { code: 'custom', status: 'not-a-code' };
    const other = { code: yes ? 'told' : 'untold' };
    export const doorProblems = { 'door-shut': { status: 400, title: 'not-a-code' } } as const;
    export type KeyCode = 'key-lost' | 'told';`;
  const page =
    '| code | means |\n|---|---|\n| bad-row | x |\n| gentle | x |\n| told | x |\n| told | x |\n| told | y |\n| long-gone | x |\n';
  const problems = errorCodeProblems(tree({ 'docs/errors.md': page, 'p/a.ts': code, 'p/a.test.ts': code }), [
    'p',
  ]);
  expect(problems).toEqual([
    'docs/errors.md:6: told is there twice',
    'docs/errors.md:8: long-gone is in no source file',
    `p/a.ts:3: code 'poor-fix' is not in docs/errors.md`,
    `p/a.ts:4: code 'out-of-range' is not in docs/errors.md`,
    `p/a.ts:6: code 'untold' is not in docs/errors.md`,
    `p/a.ts:7: code 'door-shut' is not in docs/errors.md`,
    `p/a.ts:8: code 'key-lost' is not in docs/errors.md`,
  ]);
});

it('finds packages without a line, lines without a package and lines that say too little', () => {
  const page =
    '| package | where | why | license | leaving |\n|---|---|---|---|---|\n| yaml | a | b | ISC | |\n| gone | a | b | c | d |\n';
  const named = '{"dependencies":{"yaml":"2","zod":"4","@standstill/units":"0"}}';
  expect(dependencyPageProblems(tree({ 'docs/dependencies.md': page, 'package.json': named }))).toEqual([
    'docs/dependencies.md:3: yaml needs where, why, license and what leaving would take',
    'docs/dependencies.md:4: gone is in no package.json',
    'package.json:1: zod has no line in docs/dependencies.md',
  ]);
});

it('finds links and paths that lead nowhere', () => {
  const page =
    '[a](docs/a.md#x) [b](gone.md) [web](https://example.org)\n`packages/no/where.ts`\n```\n[c](fenced.md)\n```\n';
  expect(linkProblems(tree({ 'README.md': page, 'docs/a.md': '[up](../README.md)' }))).toEqual([
    'README.md:1: gone.md leads nowhere',
    'README.md:2: packages/no/where.ts leads nowhere',
  ]);
});

it('finds a table of rooms that says something else than the check', () => {
  const rooms = JSON.stringify({
    rooms: [
      { name: 'logs', mayImport: ['units'] },
      { name: 'units', mayImport: [] },
    ],
  });
  const page = '| room | what | may import |\n|---|---|---|\n| logs | x | units, braking |\n';
  expect(roomTableProblems(tree({ 'tools/rooms.json': rooms, 'ARCHITECTURE.md': page }))).toEqual([
    'ARCHITECTURE.md:3: logs may import units, not units, braking',
    'ARCHITECTURE.md:1: the room units is not in the table',
  ]);
});

describe('the page of truths', () => {
  const head = '| truth | held by | cases | tolerance | not held yet |\n|---|---|---:|---|---|\n';
  const law = 'fc.assert(property, { numRuns: 500 }); fc.assert(other, { numRuns: 1_000 });';
  const problems = (rows: string): readonly string[] =>
    truthProblems(tree({ 'docs/truths.md': `# Truths\n\n${head}${rows}`, 'p/a.law.test.ts': law }));

  it('accepts rows whose test is there and draws what they say', () => {
    expect(
      problems('| a | `p/a.law.test.ts` | 500 | x | |\n| b | `p/a.law.test.ts` | 1,000 | x | |\n'),
    ).toEqual([]);
    expect(problems('| a | `p/a.law.test.ts` | none: fixed cases | x | |\n')).toEqual([]);
  });

  it('finds tests that are not there, too few cases, other numbers, rows without a test and no table', () => {
    const said = [
      ['| a | `p/b.law.test.ts` | 500 | x | |', 'p/b.law.test.ts is not there'],
      ['| a | `p/a.law.test.ts` | 100 | x | |', 'has 100 cases; at least 500 are wanted'],
      ['| a | `p/a.law.test.ts` | many | x | |', 'has NaN cases; at least 500 are wanted'],
      ['| a | `p/a.law.test.ts` | 600 | x | |', 'p/a.law.test.ts draws 500, 1000, not 600'],
      ['| a | to come | 500 | x | |', 'names no test'],
    ] as const;
    for (const [row, problem] of said)
      expect(problems(`${row}\n`)).toEqual([`docs/truths.md: 'a': ${problem}`]);
    expect(problems('')).toEqual(['docs/truths.md: no table of truths']);
  });
});
