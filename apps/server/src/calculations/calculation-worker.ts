import { parentPort } from 'node:worker_threads';
import { calculationsHere } from './calculations-here.ts';
import type { CalculationAnswer, CalculationRequest } from './calculation-message.ts';

const calculations = calculationsHere();

parentPort?.on('message', (request: CalculationRequest) => {
  void answer(request).then((message) => parentPort?.postMessage(message));
});

async function answer({ number, kind, task }: CalculationRequest): Promise<CalculationAnswer> {
  try {
    return { number, ok: true, answer: await calculate(kind, task) };
  } catch (error) {
    return {
      number,
      ok: false,
      reason: error instanceof Error ? (error.stack ?? error.message) : String(error),
    };
  }
}

function calculate(kind: CalculationRequest['kind'], task: unknown): Promise<unknown> {
  const calculation: (task: never) => Promise<unknown> = calculations[kind];
  return calculation(task as never);
}
