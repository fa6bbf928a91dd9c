// From the start of a process to the first page served: the server with its database, against a bare server of the same
// framework that answers one line. Both are started in turn in the same run.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const rounds = 9;
const hello = `
  const { default: fastify } = await import('fastify');
  const app = fastify();
  app.get('/', (_, reply) => reply.type('text/html').send('<!doctype html><title>hello</title>'));
  console.log('at ' + await app.listen({ host: '127.0.0.1', port: 0 }) + '/');
`;

export default async function serverStart() {
  const program = join(root, 'apps/server/dist/main.js');
  for (const built of [program, join(root, 'apps/web/dist/index.html')])
    if (!existsSync(built)) throw new Error(`${built} is not built; run npm run build`);
  const folder = mkdtempSync(join(tmpdir(), 'standstill-bench-'));
  const serve = [program, '--port', '0', '--database', join(folder, 'jobs')];
  const bare = ['--input-type=module', '-e', hello];
  try {
    const first = await firstPage(serve);
    const warm = [];
    const reference = [];
    for (let round = 0; round < rounds; round += 1) {
      reference.push(await firstPage(bare));
      warm.push(await firstPage(serve));
    }
    return rowsOf({ first, warm, reference });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function rowsOf({ first, warm, reference }) {
  const bare = median(reference.map(({ time }) => time));
  const row = (name, value, note) => ({
    name,
    value,
    unit: 'ms',
    reference: `bare framework, ${bare.toFixed(0)} ms`,
    ratio: value / bare,
    note,
  });
  const memory = median(warm.map((each) => each.memory));
  const bareMemory = median(reference.map((each) => each.memory));
  const rows = [
    row('server start to first page', median(warm.map(({ time }) => time)), `median of ${rounds}, SQLite`),
    row('server start to first page, new database', first.time, 'one start, makes the tables'),
  ];
  if (Number.isNaN(memory)) return rows;
  const held = { name: 'server memory after the first page', value: memory, unit: 'MB' };
  return [
    ...rows,
    { ...held, reference: `bare framework, ${bareMemory.toFixed(0)} MB`, ratio: memory / bareMemory },
  ];
}

/** Starts a server, asks for its page and ends it; ms from the start of the process to the last byte, and MB held. */
async function firstPage(words) {
  const began = performance.now();
  const child = spawn(process.execPath, words, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise((resolve) => child.once('exit', resolve));
  const answer = await fetch(await printedAddress(child));
  const page = await answer.text();
  const time = performance.now() - began;
  if (!answer.ok || !page.startsWith('<!doctype html>')) throw new Error(`no page: ${page.slice(0, 100)}`);
  const memory = memoryOf(child.pid);
  child.kill('SIGKILL');
  await ended;
  return { time, memory };
}

function printedAddress(child) {
  return new Promise((resolve, reject) => {
    let text = '';
    child.stdout.setEncoding('utf8').on('data', (piece) => {
      text += piece;
      const found = /http:\/\/\S+/.exec(text);
      if (found !== null) resolve(found[0]);
    });
    child.once('exit', (code) => reject(new Error(`the server ended with ${code} before it listened`)));
  });
}

/** MB that the process holds; NaN where the system does not tell. */
function memoryOf(pid) {
  const file = `/proc/${pid}/status`;
  if (!existsSync(file)) return Number.NaN;
  return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(file, 'utf8'))?.[1]) / 1024;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}
