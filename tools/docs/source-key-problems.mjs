import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sourceFiles } from '../architecture/source-files.mjs';

/** Source keys in comments that docs/sources.md doesn't have, and keys there that are twice or out of order. */
export function sourceKeyProblems(root, folders) {
  const { keys, problems } = readSources(root);
  for (const file of folders.flatMap((folder) => sourceFiles(root, folder))) {
    const lines = readFileSync(join(root, file), 'utf8').split('\n');
    lines.forEach((line, index) => {
      if (!/^\s*(?:\/?\*+|\/\/).*\bSources?:/.test(line)) return;
      for (const [, key] of line.slice(line.indexOf('Source')).matchAll(/\[([^\]\s]+)\]/g))
        if (!keys.has(key)) problems.push(`${file}:${index + 1}: source '${key}' is not in docs/sources.md`);
    });
  }
  return problems;
}

function readSources(root) {
  const problems = [];
  const keys = new Set();
  let last = '';
  readFileSync(join(root, 'docs/sources.md'), 'utf8')
    .split('\n')
    .forEach((line, index) => {
      const cells = line.split('|').map((cell) => cell.trim());
      const key = cells[1] ?? '';
      if (!line.startsWith('|') || key === 'key' || /^-+$/.test(key)) return;
      const place = `docs/sources.md:${index + 1}`;
      if (keys.has(key)) problems.push(`${place}: ${key} is there twice`);
      else if (key < last) problems.push(`${place}: ${key} comes after ${last}; keep the keys sorted`);
      if (!/read|from memory|common practice|our own/.test(cells[3] ?? ''))
        problems.push(`${place}: ${key} does not say how it is known (read, from memory, common practice)`);
      keys.add(key);
      last = key;
    });
  return { keys, problems };
}
