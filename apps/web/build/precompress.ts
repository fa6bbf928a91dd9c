import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import type { Plugin } from 'vite';

const worthIt = /\.(?:js|css|html|svg|json|webmanifest)$/;
const smallest = 1024;

/** Writes `x.gz` and `x.br` beside every text asset, so that the server never compresses while somebody waits. */
export function precompress(): Plugin {
  let folder = '';
  return {
    name: 'standstill-precompress',
    apply: 'build',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    async writeBundle() {
      for (const file of await textFiles(folder)) await compressBeside(file);
    },
  };
}

async function textFiles(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true });
  return entries.filter((name) => worthIt.test(name)).map((name) => join(folder, name));
}

async function compressBeside(file: string): Promise<void> {
  if ((await stat(file)).size < smallest) return;
  const content = await readFile(file);
  const best = { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } };
  await writeFile(`${file}.gz`, await promisify(gzip)(content, { level: 9 }));
  await writeFile(`${file}.br`, await promisify(brotliCompress)(content, best));
}
