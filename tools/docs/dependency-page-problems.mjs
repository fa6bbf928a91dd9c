import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

const page = 'docs/dependencies.md';

/** Packages of others that docs/dependencies.md doesn't explain, and lines there about packages that are gone. */
export function dependencyPageProblems(root) {
  const named = new Map(
    packageFiles(root).flatMap((file) => dependenciesOf(root, file).map((name) => [name, file])),
  );
  const told = new Map();
  const problems = [];
  readFileSync(join(root, page), 'utf8')
    .split('\n')
    .forEach((line, index) => {
      const cells = line.split('|').map((cell) => cell.trim());
      const name = cells[1]?.replaceAll('`', '') ?? '';
      if (!line.startsWith('|') || name === 'package' || /^-+$/.test(name)) return;
      const place = `${page}:${index + 1}`;
      if (told.has(name)) problems.push(`${place}: ${name} is there twice`);
      if (!named.has(name)) problems.push(`${place}: ${name} is in no package.json`);
      if (cells.slice(2, 6).some((cell) => cell === '') || cells.length < 7)
        problems.push(`${place}: ${name} needs where, why, license and what leaving would take`);
      told.set(name, index);
    });
  for (const [name, file] of named)
    if (!told.has(name)) problems.push(`${file}:1: ${name} has no line in ${page}`);
  return problems;
}

function packageFiles(root) {
  const rooms = ['packages', 'apps'].flatMap((folder) =>
    existsSync(join(root, folder))
      ? readdirSync(join(root, folder)).map((name) => `${folder}/${name}/package.json`)
      : [],
  );
  return ['package.json', ...rooms].filter((file) => existsSync(join(root, file)));
}

function dependenciesOf(root, file) {
  const { dependencies = {}, devDependencies = {} } = JSON.parse(readFileSync(join(root, file), 'utf8'));
  return Object.keys({ ...dependencies, ...devDependencies }).filter(
    (name) => !name.startsWith('@standstill/'),
  );
}
