import { once } from 'node:events';
import { writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { realCommand, repository, startCommand } from '../standstill.testing.ts';

const { folder, run } = realCommand();
const started: ReturnType<typeof startCommand>[] = [];
afterEach(() => {
  for (const child of started.splice(0)) if (child.exitCode === null) child.kill('SIGKILL');
});

/** Starts the server and waits for what it says. */
async function serve(
  ...words: string[]
): Promise<{ readonly address: string; readonly stop: () => Promise<number> }> {
  const child = startCommand(folder(), ['serve', '--port', '0', '--no-open', '--json', ...words]);
  started.push(child);
  let out = '';
  child.stdout?.setEncoding('utf8');
  for await (const text of child.stdout ?? []) {
    out += String(text);
    if (out.includes('}')) break;
  }
  const { kind, version, address } = JSON.parse(out) as { kind: string; version: number; address: string };
  expect({ kind, version }).toEqual({ kind: 'serving', version: 1 });
  return {
    address,
    stop: async () => {
      child.kill('SIGTERM');
      const [code] = (await once(child, 'exit')) as [number];
      return code;
    },
  };
}

async function titles(address: string): Promise<readonly string[]> {
  const answer = await fetch(`${address}api/jobs`);
  const { jobs } = (await answer.json()) as { readonly jobs: readonly { readonly title: string }[] };
  return jobs.map(({ title }) => title);
}

describe('serve', () => {
  it('serves the demo job on this machine, keeps it, and ends in good order', async () => {
    const demo = join(repository, 'examples/hill-climb-coupe');
    const first = await serve('--data', 'kept', '--demo', demo);
    expect(first.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    expect(await titles(first.address)).toEqual(['Hill-climb coupe, long stops and a soft pedal']);
    expect(await first.stop()).toBe(0);
    const second = await serve('--data', 'kept');
    expect(await titles(second.address)).toHaveLength(1);
    expect(await second.stop()).toBe(0);
  });

  it('says in one line that the port is taken', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    const { port } = other.address() as AddressInfo;
    const { code, out, err } = run('serve', '--port', String(port), '--data', 'taken', '--no-open');
    other.close();
    expect({ code, out }).toEqual({ code: 5, out: '' });
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(err).toContain(`Port ${port} is taken`);
  });

  it('refuses a demo with mistakes and data that are no database', () => {
    writeFileSync(join(folder(), 'broken.yaml'), 'standstill: 2\n');
    const broken = run('serve', '--port', '0', '--data', 'a', '--demo', 'broken.yaml', '--no-open');
    expect(broken).toMatchObject({ code: 3, out: '' });
    expect(broken.err).toMatch(/^broken\.yaml:1:1: /);
    const gone = run('serve', '--port', '0', '--data', 'a', '--demo', 'gone.yaml', '--no-open');
    expect(gone).toMatchObject({ code: 3, out: '', err: 'gone.yaml: there is no such file.\n' });
    writeFileSync(join(folder(), 'notes.txt'), 'no database at all, only notes '.repeat(200));
    const { code, out, err } = run('serve', '--port', '0', '--data', 'notes.txt', '--no-open');
    expect({ code, out }).toEqual({ code: 5, out: '' });
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
