import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { drawOnPool, drawRange, predict, readJob } from '@standstill/workshop';
import type { DrawRequest } from '@standstill/workshop';
import { afterEach, describe, expect, it } from 'vitest';
import { realCommand, repository } from '../standstill.testing.ts';
import { startDrawThreads } from './draw-threads.ts';
import type { DrawThreads } from './draw-threads.ts';

const { run } = realCommand();
const demo = join(repository, 'examples/hill-climb-coupe');
const reading = readJob(readFileSync(join(demo, 'job.yaml'), 'utf8'), { file: 'job.yaml' });
if (!reading.ok) throw new Error('the demo job is not a job');
const { job } = reading;
const compiled = pathToFileURL(join(repository, 'apps/cli/dist/draws/draw-thread.js'));
const setUpIds = ['as-found', 'four-wheel-kit-with-valve'];
const request: DrawRequest = { question: 'distance', setUpIds, overrides: {}, draws: 2100, seed: 2 };

let threads: DrawThreads | null = null;
afterEach(() => threads?.close());

/** Threads that run what stands here instead. */
function threadsThat(program: string): DrawThreads {
  return startDrawThreads(2, new URL(`data:text/javascript,${encodeURIComponent(program)}`));
}

describe('draw threads', () => {
  it('draw what is drawn without them, request after request', async () => {
    threads = startDrawThreads(2, compiled);
    const other = { ...request, seed: 9, draws: 600 };
    expect(await drawOnPool(job, request, threads.pool)).toStrictEqual(drawRange(job, request, 0, 2100));
    expect(await drawOnPool(job, other, threads.pool)).toStrictEqual(drawRange(job, other, 0, 600));
  });

  it('let standstill predict give what predict gives, and keep quiet where nobody looks on', () => {
    const { code, out, err } = run('predict', demo, '--draws', '1000', '--set-up', 'as-found', '--json');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const expected = predict(job, { draws: 1000, setUps: ['as-found'], units: 'us' });
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(expected)));
  });
});

describe('a thread that fails', () => {
  it('fails the draws with its reason', async () => {
    threads = threadsThat('throw new Error("no room for a thread")');
    await expect(drawOnPool(job, request, threads.pool)).rejects.toThrow(
      'a worker failed at its draws: no room for a thread',
    );
  });

  it('that ends without a word, too, and whatever it is asked afterwards', async () => {
    threads = threadsThat('process.exit(7)');
    const reason = 'a worker failed at its draws: it ended with code 7';
    await expect(drawOnPool(job, request, threads.pool)).rejects.toThrow(reason);
    await expect(drawOnPool(job, request, threads.pool)).rejects.toThrow(reason);
  });
});
