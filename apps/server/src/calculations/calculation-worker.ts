import { parentPort } from 'node:worker_threads';
import type { QuestionTask } from '../questions/answer-question.ts';
import type { JobQuestionName } from '../questions/job-questions.ts';
import { calculationsHere } from './calculations-here.ts';
import type { CalculationAnswer, CalculationRequest } from './calculation-message.ts';
import type { ComparisonTask, LogTask } from './calculations.ts';

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
  if (kind === 'ask') return calculations.ask(task as QuestionTask<JobQuestionName>);
  if (kind === 'reportLog') return calculations.reportLog(task as LogTask);
  return calculations.compare(task as ComparisonTask);
}
