import { Worker } from 'node:worker_threads';
import { RequestRefusal } from '../problems/request-refusal.ts';
import type { CalculationAnswer, CalculationRequest } from './calculation-message.ts';
import type { Calculations } from './calculations.ts';

/** Longest that one calculation may take, ms. */
const patience = 60_000;
/** MB that the thread may take for values; a log that needs more is refused, not the server ended. */
const memory = 1024;

interface Waiting {
  readonly request: CalculationRequest;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * Calculates in a thread of its own, so that the server answers others meanwhile, one thing after the other. The
 * thread starts with the first task and starts anew after one that took too long or too much memory.
 *
 * @param program - address of the compiled `calculation-worker.js`
 * @returns the calculations
 */
export function calculationsInThread(program: URL): Calculations {
  const thread = new CalculationThread(program);
  return {
    predict: (task) => thread.ask('predict', task),
    reportLog: (task) => thread.ask('reportLog', task),
    compare: (task) => thread.ask('compare', task),
    close: () => thread.close(),
  };
}

class CalculationThread {
  readonly #program: URL;
  readonly #line: Waiting[] = [];
  #worker: Worker | null = null;
  #timer: NodeJS.Timeout | undefined;
  #count = 0;

  constructor(program: URL) {
    this.#program = program;
  }

  ask<Answer>(kind: CalculationRequest['kind'], task: unknown): Promise<Answer> {
    const number = (this.#count += 1);
    return new Promise<Answer>((resolve, reject) => {
      const waiting = {
        request: { number, kind, task },
        resolve: (answer: unknown) => resolve(answer as Answer),
        reject,
      };
      this.#line.push(waiting);
      if (this.#line.length === 1) this.#startNext();
    });
  }

  async close(): Promise<void> {
    clearTimeout(this.#timer);
    for (const { reject } of this.#line.splice(0))
      reject(new RequestRefusal('calculation-too-long', 'The server is stopping.'));
    const worker = this.#worker;
    this.#worker = null;
    await worker?.terminate();
  }

  #startNext(): void {
    const next = this.#line[0];
    if (next === undefined) return;
    this.#worker ??= this.#startWorker();
    this.#timer = setTimeout(() => this.#giveUp(tooLong), patience);
    this.#worker.postMessage(next.request);
  }

  #startWorker(): Worker {
    const worker = new Worker(this.#program, { resourceLimits: { maxOldGenerationSizeMb: memory } });
    worker.unref();
    worker.on('message', (answer: CalculationAnswer) => this.#settle(answer));
    worker.on('error', (error) => {
      if (this.#worker === worker)
        this.#giveUp(() => new Error('the calculation thread ended', { cause: error }));
    });
    return worker;
  }

  #settle(answer: CalculationAnswer): void {
    clearTimeout(this.#timer);
    const waiting = this.#line.shift();
    if (answer.ok) waiting?.resolve(answer.answer);
    else waiting?.reject(new Error(`the calculation failed: ${answer.reason}`));
    this.#startNext();
  }

  /** Ends the thread under its present task; the next task gets a new one. */
  #giveUp(reason: () => Error): void {
    clearTimeout(this.#timer);
    const worker = this.#worker;
    this.#worker = null;
    void worker?.terminate();
    this.#line.shift()?.reject(reason());
    this.#startNext();
  }
}

function tooLong(): Error {
  return new RequestRefusal(
    'calculation-too-long',
    `It was ended after ${patience / 1000} s. Try a smaller log or fewer draws.`,
  );
}
