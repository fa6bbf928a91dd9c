import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Chromium } from './chromium.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const packageFile = join(root, 'node_modules/@sparticuz/chromium/package.json');

/**
 * The browser that ships inside an npm package, unpacked once into the cache of this clone. Its own libraries are
 * unpacked with it, since a machine without a browser lacks those too.
 *
 * @returns the browser; null where the package is missing or does not start here
 */
export function packagedChromium(): Chromium | null {
  if (!existsSync(packageFile)) return null;
  const { version } = JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string };
  const folder = join(root, 'node_modules/.cache/standstill/browser', version);
  try {
    if (!existsSync(folder)) unpack(folder);
    const fonts = join(folder, 'own-fonts.conf');
    writeFileSync(fonts, fontSettings(folder));
    const env = { LD_LIBRARY_PATH: join(folder, 'al2023/lib'), FONTCONFIG_FILE: fonts };
    const path = join(folder, 'chromium');
    execFileSync(path, ['--version', '--no-sandbox'], { env: { ...process.env, ...env }, stdio: 'pipe' });
    return { origin: 'package', path, env };
  } catch (error) {
    console.warn(`The browser of the npm package does not start here: ${firstLine(error)}`);
    return null;
  }
}

/**
 * The package unpacks into the temporary folder and brings its libraries only where it believes to be in the cloud that
 * it was made for; both are told by variables. A folder is moved into place whole, so that a broken start leaves none.
 */
function unpack(folder: string): void {
  const half = `${folder}.${process.pid}`;
  mkdirSync(half, { recursive: true });
  const script = "import('@sparticuz/chromium').then((made) => made.default.executablePath())";
  const env = { ...process.env, TMPDIR: half, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs22.x' };
  execFileSync(process.execPath, ['-e', script], { cwd: dirname(packageFile), env, stdio: 'pipe' });
  if (existsSync(folder)) rmSync(half, { recursive: true });
  else renameSync(half, folder);
}

/** The package's own settings look for fonts in the cloud's folders only; a browser that finds none ends at the first text. */
function fontSettings(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(folder, 'fonts')}</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir>${join(folder, 'fonts-cache')}</cachedir>
</fontconfig>
`;
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split('\n')[0] ?? '';
}
