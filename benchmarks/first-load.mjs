// How many bytes of script a page needs before it can be used, gzipped, against a page that only has React in it.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const scratch = join(root, 'node_modules/.cache/standstill/first-load');

/** Pages by the module that is loaded when they are opened. */
const pages = [
  { name: 'list of jobs', module: 'src/features/jobs/jobs-list-page.tsx' },
  { name: 'survey', module: 'src/features/survey/survey-page.tsx' },
  { name: 'limits', module: 'src/features/limits/limits-page.tsx' },
  { name: 'options', module: 'src/features/options/options-page.tsx' },
  { name: 'proof', module: 'src/features/proof/proof-page.tsx' },
];

export default async function firstLoad() {
  const bare = scriptBytes(await buildBarePage(), ['index.html']);
  const app = await buildApp();
  const rows = pages.map(({ name, module }) => {
    const value = scriptBytes(app, ['index.html', module]);
    return row(`script before the ${name} can be used`, value, bare);
  });
  const worker = row('script of the worker, loaded beside the page', workerBytes(app), bare);
  return [row('a page with nothing but React', bare, bare), ...rows, worker];
}

function row(name, bytes, bare) {
  return { name, value: bytes / 1000, unit: 'kB gz', reference: 'React alone', ratio: bytes / bare };
}

async function buildApp() {
  const outDir = join(scratch, 'app');
  const app = join(root, 'apps/web');
  await build({
    root: app,
    configFile: join(app, 'vite.config.ts'),
    logLevel: 'silent',
    build: { outDir, emptyOutDir: true, manifest: true },
  });
  return outDir;
}

async function buildBarePage() {
  const folder = join(scratch, 'bare');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    join(folder, 'index.html'),
    '<div id="app"></div><script type="module" src="/main.js"></script>',
  );
  const lines = [
    "import { createElement } from 'react';",
    "import { createRoot } from 'react-dom/client';",
    "createRoot(document.getElementById('app')).render(createElement('p', null, 'nothing'));",
  ];
  writeFileSync(join(folder, 'main.js'), lines.join('\n'));
  const outDir = join(folder, 'dist');
  await build({
    root: folder,
    configFile: false,
    logLevel: 'silent',
    build: { outDir, manifest: true, target: 'es2022' },
  });
  return outDir;
}

function workerBytes(outDir) {
  const folder = join(outDir, 'assets');
  const file = readdirSync(folder).find((name) => /physics-worker.*\.js$/.test(name));
  if (file === undefined) throw new Error('The build has no worker.');
  return gzipSync(readFileSync(join(folder, file)), { level: 9 }).length;
}

/** The entries and all that they import before they run, each file once. */
function scriptBytes(outDir, entries) {
  const manifest = JSON.parse(readFileSync(join(outDir, '.vite/manifest.json'), 'utf8'));
  const wanted = new Set();
  const want = (key) => {
    if (wanted.has(key)) return;
    if (manifest[key] === undefined) throw new Error(`The build has no ${key}.`);
    wanted.add(key);
    for (const imported of manifest[key].imports ?? []) want(imported);
  };
  for (const entry of entries) want(entry);
  const files = [...wanted].map((key) => manifest[key].file).filter((file) => file.endsWith('.js'));
  return files.reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(outDir, file)), { level: 9 }).length,
    0,
  );
}
