import { Worker } from 'node:worker_threads';
import { RequestRefusal } from '../problems/request-refusal.ts';
import type { CalculationAnswer, CalculationRequest } from './calculation-message.ts';

interface Waiting {
  readonly request: CalculationRequest;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * A thread that works on one thing after the other. It starts with the first task, and anew after one that took too
 * long or too much memory: the server and the tasks behind it go on.
 */
export class CalculationThread {
  readonly #program: URL;
  readonly #limits: { readonly time: number; readonly memory: number };
  readonly #line: Waiting[] = [];
  #worker: Worker | null = null;
  #timer: NodeJS.Timeout | undefined;
  #count = 0;

  /**
   * @param program - address of the compiled worker
   * @param limits - ms and MB that one task may take
   */
  constructor(program: URL, limits: { readonly time: number; readonly memory: number }) {
    this.#program = program;
    this.#limits = limits;
  }

  /**
   * @param kind - what to calculate
   * @param task - of what
   * @returns the answer
   */
  ask<Answer>(kind: CalculationRequest['kind'], task: unknown): Promise<Answer> {
    const request = { number: (this.#count += 1), kind, task };
    return new Promise<Answer>((resolve, reject) => {
      this.#line.push({ request, resolve: (answer) => resolve(answer as Answer), reject });
      if (this.#line.length === 1) this.#startNext();
    });
  }

  async close(): Promise<void> {
    clearTimeout(this.#timer);
    const stopping = new RequestRefusal('server-stopping', 'Try again when it is back.');
    for (const { reject } of this.#line.splice(0)) reject(stopping);
    await this.#endWorker();
  }

  #startNext(): void {
    const next = this.#line[0];
    if (next === undefined) return;
    this.#worker ??= this.#startWorker();
    this.#timer = setTimeout(() => this.#giveUp(tooHeavy()), this.#limits.time);
    this.#worker.postMessage(next.request);
  }

  #startWorker(): Worker {
    const worker = new Worker(this.#program, {
      resourceLimits: { maxOldGenerationSizeMb: this.#limits.memory },
    });
    worker.unref();
    worker.on('message', (answer: CalculationAnswer) => this.#settle(answer));
    worker.on('error', (error) => {
      if (this.#worker === worker) this.#giveUp(endedBy(error));
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
  #giveUp(reason: Error): void {
    clearTimeout(this.#timer);
    void this.#endWorker();
    this.#line.shift()?.reject(reason);
    this.#startNext();
  }

  async #endWorker(): Promise<void> {
    const worker = this.#worker;
    this.#worker = null;
    await worker?.terminate();
  }
}

function endedBy(error: Error): Error {
  const outOfMemory = 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY';
  return outOfMemory ? tooHeavy() : new Error('the calculation thread ended', { cause: error });
}

function tooHeavy(): RequestRefusal {
  return new RequestRefusal('calculation-too-heavy', 'It was ended. Try a shorter log or fewer draws.');
}
