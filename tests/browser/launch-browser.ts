import { chromium, type Browser } from 'playwright-core';
import { findChromium, type Chromium } from './chromium.ts';

const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Starts the browser of the tests. On CI a missing browser is a failure; at home the tests that need one are skipped,
 * with one line that says so.
 *
 * @returns the browser; null where there is none
 * @throws Error on CI where there is none
 */
export async function launchBrowser(): Promise<Browser | null> {
  const found = findChromium();
  if (found !== null) return launch(found);
  const line =
    'No Chromium or Chrome here: the browser tests are skipped. Install one, or set CHROMIUM_PATH.';
  if (process.env['CI']) throw new Error(line);
  console.warn(line);
  return null;
}

/** Starts a found browser. */
export function launch({ path, env }: Chromium): Promise<Browser> {
  return chromium.launch({ executablePath: path, args: flags, env: { ...ownEnvironment(), ...env } });
}

function ownEnvironment(): Record<string, string> {
  const entries = Object.entries(process.env);
  return Object.fromEntries(entries.filter((entry): entry is [string, string] => entry[1] !== undefined));
}
