// Writes docs/library.md: every figure of the generic classes with its unit, spread, origin and note, from the classes
// themselves. `--check` writes nothing and fails when the committed page is not what the classes say. Needs the build.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { libraryPage } from './library/library-page.mjs';
import { root } from './run/root.mjs';

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const page = libraryPage(await import('../packages/braking/dist/index.js'));
  const file = join(root, 'docs/library.md');
  if (!process.argv.includes('--check')) writeFileSync(file, page);
  else if (!existsSync(file) || readFileSync(file, 'utf8') !== page) {
    console.error('docs/library.md: not what the classes say; run node tools/library-page.mjs');
    process.exitCode = 1;
  }
}
