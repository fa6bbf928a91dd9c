import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { importsOf } from './imports-of.mjs';
import { isBuiltin } from './room-problems.mjs';
import { isTestFile, sourceFiles } from './source-files.mjs';

const configuration = ['vitest.config.ts', 'knip.json', 'package.json'];

/** Packages that a file imports and its package.json doesn't name, and packages that are named and not used. */
export function dependencyProblems(root, table) {
  const rootNames = Object.keys(readPackage(root, 'package.json').devDependencies ?? {});
  const rootUse = new Set();
  const problems = [];
  for (const room of table.rooms.filter(({ folder }) => existsSync(join(root, folder, 'package.json')))) {
    const file = `${room.folder}/package.json`;
    const { dependencies = {}, devDependencies = {} } = readPackage(root, file);
    const used = new Set();
    for (const entry of packageImports(root, room.folder)) {
      used.add(entry.package);
      const atWork = entry.name in dependencies || entry.package in dependencies;
      const inTests = entry.package in devDependencies || rootNames.includes(entry.package);
      if (inTests) rootUse.add(entry.package);
      if (entry.package === room.package || atWork || (inTests && entry.inDevelopment)) continue;
      problems.push(`${entry.file}:${entry.line}: ${entry.package} is not a dependency in ${file}`);
    }
    for (const name of [...Object.keys(dependencies), ...Object.keys(devDependencies)])
      if (!isUsed(name, used, table))
        problems.push(`${file}:1: ${name} is a dependency that no file imports`);
  }
  return [...problems, ...rootProblems(root, table, rootNames, rootUse)];
}

/** Development packages of the root serve the tests of every room, the tools and the configuration. */
function rootProblems(root, table, names, used) {
  const problems = [];
  for (const entry of [...table.benches, 'checks'].flatMap((folder) => packageImports(root, folder))) {
    used.add(entry.package);
    const isOurs = table.rooms.some((room) => room.package === entry.package);
    if (!isOurs && !names.includes(entry.package) && !isInstalledByRoom(root, table, entry.package))
      problems.push(`${entry.file}:${entry.line}: ${entry.package} is not a dependency in package.json`);
  }
  const texts = [
    ...configuration.map((file) => [file, file]),
    ...sourceFiles(root, 'tools').map((file) => [file, file]),
  ]
    .filter(([file]) => existsSync(join(root, file)))
    .map(([file]) => scriptsOnly(file, readFileSync(join(root, file), 'utf8')));
  for (const name of names)
    if (!isUsed(name, used, table) && !texts.some((text) => mentions(text, name)))
      problems.push(`package.json:1: ${name} is a dependency that nothing uses`);
  return problems;
}

function isInstalledByRoom(root, table, name) {
  return table.rooms.some(({ folder }) => {
    const file = `${folder}/package.json`;
    return existsSync(join(root, file)) && name in (readPackage(root, file).dependencies ?? {});
  });
}

/** Of package.json only the scripts count: its list of packages would let every package vouch for itself. */
function scriptsOnly(file, text) {
  return file === 'package.json' ? JSON.stringify(JSON.parse(text).scripts ?? {}) : text;
}

function mentions(text, name) {
  return new RegExp(`(?:^|['"\`\\s/])${name.replaceAll('/', '\\/')}(?:['"\`\\s/]|$)`, 'm').test(text);
}

function isUsed(name, used, table) {
  if (used.has(name) || name in table.usedWithoutImport) return true;
  if (!name.startsWith('@types/')) return false;
  const typed = name.slice('@types/'.length);
  return used.has(typed.includes('__') ? `@${typed.replace('__', '/')}` : typed);
}

/** Every import of a package under a folder; `inDevelopment` where the file never ships. */
function packageImports(root, folder) {
  return sourceFiles(root, folder).flatMap((file) =>
    importsOf(root, file)
      .filter(({ name, directive }) => !name.startsWith('.') && !isBuiltin(name) && directive !== true)
      .map(({ name, line }) => ({
        file,
        line,
        name,
        package: packageOf(name),
        inDevelopment: neverShips(file),
      })),
  );
}

function neverShips(file) {
  return isTestFile(file) || !file.includes('/src/');
}

function packageOf(name) {
  return name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/');
}

function readPackage(root, file) {
  return JSON.parse(readFileSync(join(root, file), 'utf8'));
}
