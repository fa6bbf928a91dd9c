import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

const leftOut = new Set(['node_modules', 'dist', 'coverage']);
const source = /\.(?:ts|tsx|mts|mjs|js)$/;

/** Paths, from `root`, of all source files under a folder of it. */
export function sourceFiles(root, folder) {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { withFileTypes: true })
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
    .filter((entry) => !leftOut.has(entry.name) && !entry.name.startsWith('.'))
    .flatMap((entry) => {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      if (entry.isDirectory()) return sourceFiles(root, path);
      return source.test(entry.name) ? [path] : [];
    });
}

/** True for files that run only in tests: they may use Node and development packages. */
export function isTestFile(path) {
  return /\.(?:test|check|testing)\.tsx?$/.test(path);
}
