import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

const leftOut = /(?:^|\/)(?:node_modules|dist|\.cache)(?:\/|$)|\.tsbuildinfo$|\.(?:test|testing)\.tsx?$/;

/** A digest of the content of files and folders, test files and built files left out. */
export function sourceStamp(paths) {
  const hash = createHash('sha256');
  for (const file of paths.flatMap(filesUnder).toSorted()) {
    hash.update(file).update('\0');
    hash.update(readFileSync(join(root, file)));
    hash.update('\0');
  }
  return hash.digest('hex');
}

/** The stamp that the last successful build of that name left. */
export function readStamp(name) {
  const file = stampFile(name);
  return existsSync(file) ? readFileSync(file, 'utf8') : '';
}

export function writeStamp(name, stamp) {
  mkdirSync(join(stampFile(name), '..'), { recursive: true });
  writeFileSync(stampFile(name), stamp);
}

function stampFile(name) {
  return join(root, 'node_modules/.cache/standstill/build', name);
}

function filesUnder(path) {
  if (!existsSync(join(root, path))) return [];
  if (/\.[a-z]+$/.test(path)) return [path];
  return readdirSync(join(root, path), { withFileTypes: true })
    .map((entry) => [`${path}/${entry.name}`, entry])
    .filter(([name]) => !leftOut.test(name))
    .flatMap(([name, entry]) => (entry.isDirectory() ? filesUnder(name) : [name]));
}
