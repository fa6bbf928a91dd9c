import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';
import { runNpm } from './run-command.mjs';

const modules = join(root, 'node_modules');
const abiStamp = join(modules, '.cache/standstill/node-abi');
const nativeModule = join(modules, 'better-sqlite3/build/Release/better_sqlite3.node');

/** Installs what the lock file names where it isn't installed yet; gives false where that failed. */
export async function ensureInstalled() {
  if (!matchesLock()) {
    console.log('Installing the packages (about two minutes, most of it compiling SQLite) ...');
    if ((await runNpm(['ci', '--no-audit', '--no-fund', '--loglevel=error'])) !== 0) return false;
  }
  if (!existsSync(nativeModule) || stampedAbi() !== process.versions.modules) {
    if (existsSync(abiStamp) || !existsSync(nativeModule)) {
      console.log('Building SQLite for this Node ...');
      if ((await runNpm(['rebuild', 'better-sqlite3', '--loglevel=error'])) !== 0) return false;
    }
    mkdirSync(join(abiStamp, '..'), { recursive: true });
    writeFileSync(abiStamp, process.versions.modules);
  }
  return true;
}

/** True where node_modules holds what package-lock.json names; npm's own record of the last install tells. */
function matchesLock() {
  const record = join(modules, '.package-lock.json');
  if (!existsSync(record)) return false;
  const wanted = packagesOf(join(root, 'package-lock.json'));
  const installed = packagesOf(record);
  return Object.entries(wanted).every(
    ([path, entry]) =>
      !path.startsWith('node_modules/') ||
      entry.optional === true ||
      (installed[path] !== undefined && installed[path].version === entry.version),
  );
}

function packagesOf(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}

function stampedAbi() {
  return existsSync(abiStamp) ? readFileSync(abiStamp, 'utf8') : process.versions.modules;
}
