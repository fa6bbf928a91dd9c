import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { importsOf } from './imports-of.mjs';
import { impureNames } from './impure-names.mjs';
import { isTestFile, sourceFiles } from './source-files.mjs';

const builtins = new Set(builtinModules);

/**
 * Holds every file of every room against the table: who may import whom, no way past an index, nothing of Node or the
 * browser in pure rooms, no feature from another feature, and no permission that nobody uses.
 */
export function roomProblems(root, table) {
  const problems = [];
  const used = new Set();
  for (const room of table.rooms) {
    for (const file of sourceFiles(root, room.folder)) {
      for (const entry of importsOf(root, file)) {
        const target = table.rooms.find(
          (other) => other.package !== undefined && isWithin(entry.name, other.package),
        );
        if (target !== undefined && !isTestFile(file)) used.add(`${room.name} ${target.name}`);
        if (target !== undefined && room.name === 'checks') used.add(`${room.name} ${target.name}`);
        const message = importProblem(room, file, entry, target, table);
        if (message !== undefined) problems.push(`${file}:${entry.line}: ${message}`);
      }
      if (room.pure && !isTestFile(file))
        for (const { name, reason, line } of impureNames(root, file))
          problems.push(`${file}:${line}: ${name} in a pure room; ${reason}`);
    }
  }
  for (const room of table.rooms)
    for (const name of room.mayImport)
      if (!used.has(`${room.name} ${name}`))
        problems.push(`tools/rooms.json:1: ${room.name} may import ${name}, but no file of it does`);
  return problems;
}

function importProblem(room, file, entry, target, table) {
  const { name } = entry;
  if (name.startsWith('.')) return relativeProblem(room, file, name, table);
  if (target !== undefined) return packageProblem(room, file, name, target);
  if (isBuiltin(name) || entry.directive) return nodeProblem(room, file, name, entry.directive);
  return undefined;
}

function packageProblem(room, file, name, target) {
  if (name !== target.package) return `${name} reaches past the index of ${target.name}`;
  if (target.name === room.name) return `${room.name} imports itself by its package name`;
  if (!room.mayImport.includes(target.name)) return `${room.name} may not import ${target.name}`;
  return undefined;
}

function relativeProblem(room, file, name, table) {
  const path = posix.normalize(posix.join(posix.dirname(file), name));
  if (isUnder(path, room.folder)) return room.browser ? featureProblem(room, file, path) : undefined;
  if (isTestFile(file) && table.benches.some((folder) => isUnder(path, folder))) return undefined;
  return `${name} leaves ${room.folder}; import by package name`;
}

/** features → shared, never feature → feature, never shared → feature. */
function featureProblem(room, file, path) {
  const from = featureOf(room, file);
  const to = featureOf(room, path);
  if (isUnder(file, `${room.folder}/src/shared`) && to !== undefined)
    return `shared imports the feature ${to}`;
  if (from !== undefined && to !== undefined && from !== to) return `feature ${from} imports feature ${to}`;
  return undefined;
}

function featureOf(room, path) {
  const prefix = `${room.folder}/src/features/`;
  return path.startsWith(prefix)
    ? path
        .slice(prefix.length)
        .split('/')[0]
        .replace(/\.[a-z.]+$/, '')
    : undefined;
}

function nodeProblem(room, file, name, directive) {
  if (isTestFile(file)) return undefined;
  const inBrowser = room.browser === true && isUnder(file, `${room.folder}/src`);
  if (!room.pure && !inBrowser) return undefined;
  return directive ? `types of ${name} in a room without them` : `${name} in a room without Node`;
}

export function isBuiltin(name) {
  return name.startsWith('node:') || builtins.has(name.split('/')[0]);
}

function isWithin(name, packageName) {
  return name === packageName || name.startsWith(`${packageName}/`);
}

function isUnder(path, folder) {
  return path === folder || path.startsWith(`${folder}/`);
}
