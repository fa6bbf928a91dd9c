import { parentPort } from 'node:worker_threads';
import { calculationsHere } from './calculations-here.ts';
import type { CalculationAnswer, CalculationRequest } from './calculation-message.ts';
import type { ComparisonTask, LogTask, PedalTask, PredictionTask } from './calculations.ts';

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
  if (kind === 'predict') return calculations.predict(task as PredictionTask);
  if (kind === 'limits') return calculations.limits(task as PredictionTask);
  if (kind === 'pedal') return calculations.pedal(task as PedalTask);
  if (kind === 'reportLog') return calculations.reportLog(task as LogTask);
  return calculations.compare(task as ComparisonTask);
}
