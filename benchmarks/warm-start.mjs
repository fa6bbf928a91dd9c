// How long `npm start` takes on a warm clone: from the command to the first page in hand, against starting Node for nothing.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const times = 5;

export default async function warmStart() {
  const data = mkdtempSync(join(tmpdir(), 'standstill-start-'));
  try {
    await firstPage(data);
    const starts = await repeat(() => firstPage(data));
    const bare = median(await repeat(nothing));
    const listening = median(starts.map((start) => start.listening));
    const page = median(starts.map((start) => start.page));
    return [
      row('npm start, warm: until it listens', listening, bare),
      row('npm start, warm: until the first page is there', page, bare),
      row('standstill --help', median(await repeat(help)), bare),
    ];
  } finally {
    rmSync(data, { recursive: true, force: true });
  }
}

function row(name, value, bare) {
  return { name, value, unit: 'ms', reference: 'starting Node for nothing', ratio: value / bare };
}

async function repeat(measure) {
  const values = [];
  for (let i = 0; i < times; i += 1) values.push(await measure());
  return values;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

function nothing() {
  return untilExit(['-e', '0']);
}

function help() {
  return untilExit([join(root, 'apps/cli/bin/standstill.mjs'), '--help']);
}

function untilExit(words) {
  const from = performance.now();
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, words, { stdio: 'ignore' });
    child.on('error', reject);
    child.on('exit', (code) =>
      code === 0
        ? resolve(performance.now() - from)
        : reject(new Error(`node ${words[0]} ended with ${code}`)),
    );
  });
}

/** The script behind `npm start`, without npm's own start. */
async function firstPage(data) {
  const from = performance.now();
  const words = [join(root, 'tools/start.mjs'), '--port', '0', '--no-open', '--data', data, '--json'];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise((resolve) => child.on('exit', resolve));
  const address = await addressFrom(child);
  const listening = performance.now() - from;
  const answer = await fetch(address);
  await answer.text();
  const page = performance.now() - from;
  child.kill('SIGTERM');
  await ended;
  if (!answer.ok) throw new Error(`the first page answered ${answer.status}`);
  return { listening, page };
}

function addressFrom(child) {
  return new Promise((resolve, reject) => {
    let out = '';
    child.stdout.setEncoding('utf8');
    child.stdout.on('data', (text) => {
      out += text;
      const address = /"address": "([^"]+)"/.exec(out)?.[1];
      if (address !== undefined) resolve(address);
    });
    child.on('exit', (code) => reject(new Error(`the start ended with ${code}`)));
  });
}
