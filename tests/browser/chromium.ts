import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { packagedChromium } from './packaged-chromium.ts';

/** A browser program to test in, and where it came from. */
export interface Chromium {
  readonly origin: 'environment' | 'machine' | 'package';
  readonly path: string;
  /** Variables that it needs beside those of this process. */
  readonly env: Readonly<Record<string, string>>;
}

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/**
 * Finds a browser: the one that `CHROMIUM_PATH` names, the machine's, else the one that comes with the npm packages.
 * `STANDSTILL_TEST_BROWSER=package` asks for the last only.
 *
 * @returns the browser; null where there is none that starts here
 */
export function findChromium(): Chromium | null {
  if (process.env['STANDSTILL_TEST_BROWSER'] === 'package') return packagedChromium();
  const named = process.env['CHROMIUM_PATH'];
  if (named !== undefined && existsSync(named)) return { origin: 'environment', path: named, env: {} };
  const path = machinePaths().find((place) => existsSync(place));
  return path === undefined ? packagedChromium() : { origin: 'machine', path, env: {} };
}

function machinePaths(): string[] {
  const onPath = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return ['/usr/bin', ...onPath].flatMap((folder) => names.map((name) => join(folder, name)));
}
