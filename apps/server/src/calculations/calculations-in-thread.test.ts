import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { LogTask } from './calculations.ts';
import { calculationsInThread } from './calculations-in-thread.ts';

/** A stand-in for the compiled worker that hangs, hogs, breaks or answers, as the name of the log says. */
const program = `
  import { parentPort, threadId } from 'node:worker_threads';
  parentPort.on('message', ({ number, task }) => {
    const name = task.file?.name ?? task.document;
    if (name === 'hang') for (;;);
    if (name === 'hog') for (const held = []; ; ) held.push(new Array(100_000).fill(0.1));
    if (name === 'break') return parentPort.postMessage({ number, ok: false, reason: 'broken inside' });
    if (name === 'fall') throw new Error('fell over');
    parentPort.postMessage({ number, ok: true, answer: { name, threadId } });
  });
`;

const calculations = calculationsInThread(new URL(`data:text/javascript,${encodeURIComponent(program)}`), {
  time: 1500,
  memory: 64,
});
const report = (name: string): Promise<unknown> => {
  const task: LogTask = { file: { name, content: new Uint8Array(3) }, options: {} };
  return calculations.reportLog(task);
};
const predict = (document: string): Promise<unknown> => {
  return calculations.ask({ question: 'predict', document, options: {} });
};

beforeAll(() => report('warm'));
afterAll(() => calculations.close());

describe('the calculation thread', () => {
  test('answers in the order of the tasks, all from one thread', async () => {
    const answers = (await Promise.all(['a', 'b', 'c'].map(report))) as { name: string; threadId: number }[];
    expect(answers.map(({ name }) => name)).toEqual(['a', 'b', 'c']);
    expect(new Set(answers.map(({ threadId }) => threadId)).size).toBe(1);
  });

  test.each(['hang', 'hog'])(
    'ends a log that makes it %s, says so, and goes on with the next',
    async (name) => {
      const [heavy, next] = await Promise.all([report(name), report('next')]);
      expect(heavy).toMatchObject({ kind: 'log-refusal', code: 'log-too-heavy', source: { name, bytes: 3 } });
      expect(next).toMatchObject({ name: 'next' });
    },
  );

  test('ends a prediction that hangs', async () => {
    await expect(predict('hang')).rejects.toMatchObject({ code: 'calculation-too-heavy' });
    expect(await predict('next')).toMatchObject({ name: 'next' });
  });

  test('passes a failure on and lives', async () => {
    await expect(report('break')).rejects.toThrow('broken inside');
    expect(await report('next')).toMatchObject({ name: 'next' });
  });

  test('starts anew after it fell over', async () => {
    const before = (await report('before')) as { threadId: number };
    await expect(report('fall')).rejects.toThrow('the calculation thread ended');
    const after = (await report('after')) as { threadId: number };
    expect(after.threadId).not.toBe(before.threadId);
  });
});

test('tasks that wait when the server stops are refused', async () => {
  const stopping = calculationsInThread(new URL(`data:text/javascript,${encodeURIComponent(program)}`));
  const waiting = [
    stopping.ask({ question: 'predict', document: 'hang', options: {} }),
    stopping.ask({ question: 'predict', document: 'a', options: {} }),
  ];
  const ends = Promise.allSettled(waiting);
  await stopping.close();
  for (const end of await ends)
    expect(end).toMatchObject({ status: 'rejected', reason: { code: 'server-stopping' } });
});
