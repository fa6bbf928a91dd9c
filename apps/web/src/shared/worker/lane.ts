/** The part of a `Worker` that a lane needs. */
export interface LaneWorker {
  postMessage(message: unknown): void;
  terminate(): void;
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

interface Waiting {
  readonly message: unknown;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (reason: unknown) => void;
}

/** Asks one worker, one request at a time. */
export interface Lane {
  readonly ask: (message: unknown, signal?: AbortSignal) => Promise<unknown>;
}

/**
 * A lane in front of one worker. Requests wait here, not in the worker, so that a superseded one costs nothing; one that
 * already runs is stopped by ending the worker, since a computation can't be interrupted from outside.
 */
export function openLane(start: () => LaneWorker): Lane {
  let worker: LaneWorker | null = null;
  let running: Waiting | null = null;
  const queue: Waiting[] = [];

  const next = (): void => {
    if (running || queue.length === 0) return;
    running = queue.shift() ?? null;
    worker ??= prepare(start());
    worker.postMessage(running?.message);
  };

  const prepare = (fresh: LaneWorker): LaneWorker => {
    fresh.onmessage = (event) => finish((done) => done.resolve(event.data));
    fresh.onerror = (event) => {
      stop();
      finish((done) => done.reject(new Error(event.message || 'The computation could not be started.')));
    };
    return fresh;
  };

  const finish = (tell: (done: Waiting) => void): void => {
    const done = running;
    running = null;
    if (done) tell(done);
    next();
  };

  const stop = (): void => {
    worker?.terminate();
    worker = null;
  };

  const abandon = (waiting: Waiting, reason: unknown): void => {
    const place = queue.indexOf(waiting);
    if (place >= 0) queue.splice(place, 1);
    else if (running === waiting) stop();
    else return;
    waiting.reject(reason);
    if (running === waiting) finish(() => {});
  };

  return {
    ask: (message, signal) =>
      new Promise((resolve, reject) => {
        if (signal?.aborted) return reject(signal.reason as Error);
        const waiting: Waiting = { message, resolve, reject };
        signal?.addEventListener('abort', () => abandon(waiting, signal.reason), { once: true });
        queue.push(waiting);
        next();
      }),
  };
}
