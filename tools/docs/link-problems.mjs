import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

const leftOut = new Set(['node_modules', 'dist', '.git', '.standstill', 'coverage', 'screenshots']);

/** Links and code paths in the project's pages that lead nowhere. */
export function linkProblems(root) {
  return pages(root, '').flatMap((page) => {
    const problems = [];
    let fenced = false;
    readFileSync(join(root, page), 'utf8')
      .split('\n')
      .forEach((line, index) => {
        if (line.startsWith('```')) fenced = !fenced;
        if (fenced) return;
        for (const target of [...linksIn(line), ...pathsIn(root, line)])
          if (
            !existsSync(
              join(root, normalize(target.from === 'page' ? join(dirname(page), target.path) : target.path)),
            )
          )
            problems.push(`${page}:${index + 1}: ${target.path} leads nowhere`);
      });
    return problems;
  });
}

function linksIn(line) {
  return [...line.matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target]) => target.split('#')[0])
    .filter((target) => target !== '' && !/^[a-z]+:/.test(target))
    .map((path) => ({ from: 'page', path: decodeURI(path) }));
}

/** `packages/logs/src/index.ts` in a text is a promise that the file is there. */
function pathsIn(root, line) {
  return [
    ...line.matchAll(/`((?:packages|apps|tools|tests|checks|docs|benchmarks|schemas|examples)\/[\w./-]+)`/g),
  ]
    .map(([, path]) => ({ from: 'root', path }))
    .filter(({ path }) => !/(?:^|\/)dist(?:\/|$)/.test(path));
}

function pages(root, folder) {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => !leftOut.has(entry.name))
    .flatMap((entry) => {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      if (entry.isDirectory()) return pages(root, path);
      return entry.name.endsWith('.md') ? [path] : [];
    });
}
