import { Worker } from 'node:worker_threads';
import { DrawFailedError, remoteHand } from '@standstill/workshop';
import type { DrawMessage, DrawPool, DrawReply } from '@standstill/workshop';

/** Threads that draw, started once and kept until they are closed. */
export interface DrawThreads {
  readonly pool: DrawPool;
  close(): Promise<void>;
}

interface Waiting {
  readonly resolve: (reply: DrawReply) => void;
  readonly reject: (reason: Error) => void;
}

/** What each thread runs: this file's neighbor once both are compiled. */
const compiled = new URL('./draw-thread.js', import.meta.url);

/** MB for what lives shortly; with what a thread has by itself, a twentieth of its time goes into clearing up. */
const maxYoungGenerationSizeMb = 64;

/**
 * Starts threads that draw.
 *
 * @param count - how many
 * @param program - address of the compiled thread
 * @returns the pool of them
 */
export function startDrawThreads(count: number, program: URL = compiled): DrawThreads {
  const threads = Array.from({ length: count }, () => startThread(program));
  return {
    pool: { hands: threads.map(({ send }) => remoteHand(send)) },
    close: async () => void (await Promise.all(threads.map(({ worker }) => worker.terminate()))),
  };
}

/** One thread; it replies in the order of the messages. Once it has broken, everything that it is asked fails. */
function startThread(program: URL): {
  readonly worker: Worker;
  readonly send: (message: DrawMessage) => Promise<DrawReply>;
} {
  const worker = new Worker(program, { execArgv: [], resourceLimits: { maxYoungGenerationSizeMb } });
  const waiting: Waiting[] = [];
  let broken: Error | null = null;
  const fail = (reason: string): void => {
    broken ??= new DrawFailedError(reason);
    for (const { reject } of waiting.splice(0)) reject(broken);
  };
  worker.on('message', (reply: DrawReply) => waiting.shift()?.resolve(reply));
  worker.on('messageerror', () => fail('its reply could not be read'));
  worker.on('error', ({ message }: Error) => fail(message));
  worker.on('exit', (code) => fail(`it ended with code ${code}`));
  const send = (message: DrawMessage): Promise<DrawReply> =>
    new Promise((resolve, reject) => {
      if (broken !== null) return reject(broken);
      waiting.push({ resolve, reject });
      worker.postMessage(message);
    });
  return { worker, send };
}
