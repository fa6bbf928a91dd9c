import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { dependencyProblems } from './dependency-problems.mjs';
import { roomProblems } from './room-problems.mjs';

const table = {
  rooms: [
    {
      name: 'physics',
      folder: 'packages/physics',
      package: '@a/physics',
      pure: true,
      mayImport: [] as string[],
    },
    { name: 'job', folder: 'packages/job', package: '@a/job', pure: true, mayImport: ['physics'] },
    { name: 'page', folder: 'apps/page', package: '@a/page', pure: false, browser: true, mayImport: ['job'] },
  ],
  benches: ['tests', 'tools'],
  usedWithoutImport: {},
};

/** A tree that keeps every rule; each test adds the one file that breaks one. */
const sound = {
  'package.json': '{ "devDependencies": { "vitest": "1.0.0" } }',
  'packages/physics/package.json': '{ "name": "@a/physics" }',
  'packages/physics/src/index.ts': `export * from './torque.ts';`,
  'packages/physics/src/torque.ts': `export const torque = (document: number) => document * Math.PI;`,
  'packages/physics/src/torque.test.ts': `import { it } from 'vitest';\nimport 'node:fs';\nconsole.log(Date.now());`,
  'packages/job/package.json': '{ "name": "@a/job", "dependencies": { "@a/physics": "1", "yaml": "2" } }',
  'packages/job/src/index.ts': `import { torque } from '@a/physics';\nimport type { Node } from 'yaml';\nexport { torque };`,
  'apps/page/package.json': '{ "name": "@a/page", "dependencies": { "@a/job": "1" } }',
  'apps/page/src/shared/road.ts': `export const road = 1;`,
  'apps/page/src/features/survey/survey.ts': `import '../../shared/road.ts';\nimport '@a/job';`,
  'apps/page/src/features/limits/limits.ts': `import './feet.ts';`,
};

const trees: string[] = [];
function tree(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'standstill-architecture-'));
  trees.push(folder);
  for (const [path, text] of Object.entries({ ...sound, ...files })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
afterEach(() => {
  for (const folder of trees.splice(0)) rmSync(folder, { recursive: true });
});

describe('rooms', () => {
  it('accepts a tree that keeps every rule', () => {
    expect(roomProblems(tree({}), table)).toEqual([]);
  });

  it.each([
    [
      'a forbidden import',
      'packages/physics/src/a.ts',
      `\nimport '@a/job';`,
      ':2: physics may not import job',
    ],
    [
      'a forbidden re-export',
      'packages/physics/src/a.ts',
      `export * from '@a/job';`,
      ':1: physics may not import job',
    ],
    [
      'a forbidden lazy import',
      'packages/physics/src/a.ts',
      `void import('@a/job');`,
      ':1: physics may not import job',
    ],
    [
      'a forbidden type import',
      'packages/physics/src/a.ts',
      `import type { J } from '@a/job';`,
      'may not import job',
    ],
    [
      'a forbidden import in a test',
      'packages/physics/src/a.test.ts',
      `import '@a/job';`,
      'may not import job',
    ],
    [
      'a way past an index',
      'packages/job/src/a.ts',
      `import '@a/physics/src/torque.ts';`,
      'past the index of physics',
    ],
    [
      'a path into another room',
      'packages/job/src/a.ts',
      `import '../../physics/src/torque.ts';`,
      'leaves packages/job',
    ],
    [
      'Node in a pure room',
      'packages/physics/src/a.ts',
      `import 'node:fs';`,
      'node:fs in a room without Node',
    ],
    ['Node by its old name', 'packages/physics/src/a.ts', `import 'fs/promises';`, 'in a room without Node'],
    [
      'Node types',
      'packages/physics/src/a.ts',
      `/// <reference types="node" />`,
      'types of node in a room without',
    ],
    ['Node in the browser', 'apps/page/src/a.ts', `import 'node:path';`, 'node:path in a room without Node'],
    ['the clock', 'packages/physics/src/a.ts', `\n\nexport const t = Date.now();`, ':3: Date in a pure room'],
    ['a date', 'packages/physics/src/a.ts', `export const t = new Date(0);`, 'Date in a pure room'],
    [
      'chance',
      'packages/physics/src/a.ts',
      `export const r = Math.random();`,
      'random numbers are passed in',
    ],
    ['printing', 'packages/physics/src/a.ts', `console.log(1);`, 'console in a pure room'],
    ['a declared way round', 'packages/physics/src/a.ts', `\ndeclare const console: C;`, ':2: console in'],
    ['the page', 'packages/physics/src/a.ts', `export const d = document.title;`, 'document in a pure room'],
    [
      'feature to feature',
      'apps/page/src/features/survey/a.ts',
      `import '../limits/feet.ts';`,
      'feature survey imports',
    ],
    [
      'shared to feature',
      'apps/page/src/shared/a.ts',
      `import '../features/limits/x.ts';`,
      'shared imports the feature',
    ],
  ])('finds %s', (_title, file, text, message) => {
    const problems = roomProblems(tree({ [file]: text }), table);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(`${file}:`);
    expect(problems[0]).toContain(message);
  });

  it('finds a permission that nobody uses, also where only a test uses it', () => {
    const files = {
      'packages/job/src/index.ts': 'export {};',
      'packages/job/src/a.test.ts': `import '@a/physics';`,
    };
    expect(roomProblems(tree(files), table)).toEqual([
      'tools/rooms.json:1: job may import physics, but no file of it does',
    ]);
  });

  it('leaves alone names that the file binds, properties and words in texts', () => {
    const text = `/** Date */ export const f = (a: { Date: string }) => a.Date + 'console.log' + { process: 1 }.process;`;
    expect(roomProblems(tree({ 'packages/physics/src/a.ts': text }), table)).toEqual([]);
  });
});

describe('dependencies', () => {
  it('accepts a tree where every package is named and used', () => {
    expect(dependencyProblems(tree({}), table)).toEqual([]);
  });

  it.each([
    [
      'an import not named',
      'packages/job/src/a.ts',
      `import 'zod/mini';`,
      'a.ts:1: zod is not a dependency in packages/job',
    ],
    [
      'a development package in shipped code',
      'packages/job/src/a.ts',
      `import 'vitest';`,
      'a.ts:1: vitest is not a dependency in packages/job/package.json',
    ],
    [
      'a package nobody imports',
      'packages/job/src/index.ts',
      `import '@a/physics';`,
      'yaml is a dependency that no file',
    ],
    [
      'a tool nobody runs',
      'package.json',
      `{"devDependencies":{"vitest":"1","knip":"1"}}`,
      'knip is a dependency that nothing',
    ],
    [
      'an import of a tool not named',
      'tools/a.mjs',
      `import 'lodash';`,
      'tools/a.mjs:1: lodash is not a dependency',
    ],
  ])('finds %s', (_title, file, text, message) => {
    const problems = dependencyProblems(tree({ [file]: text }), table);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(message);
  });
});
