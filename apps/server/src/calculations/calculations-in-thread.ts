import type { LogRefusal, LogReport } from '@standstill/workshop';
import { RequestRefusal } from '../problems/request-refusal.ts';
import { CalculationThread } from './calculation-thread.ts';
import type { Calculations, LogTask } from './calculations.ts';

/**
 * Calculates in a thread of its own, so that the server answers others meanwhile.
 *
 * @param program - address of the compiled `calculation-worker.js`
 * @param limits - ms and MB that one calculation may take
 * @returns the calculations
 */
export function calculationsInThread(
  program: URL,
  limits: { readonly time: number; readonly memory: number } = { time: 60_000, memory: 1024 },
): Calculations {
  const thread = new CalculationThread(program, limits);
  return {
    ask: (task) => thread.ask('ask', task),
    reportLog: (task) =>
      thread.ask<LogReport | LogRefusal>('reportLog', task).catch((error: unknown) => tooHeavy(error, task)),
    drawStops: (task) => thread.ask('drawStops', task),
    compare: (task) => thread.ask('compare', task),
    fade: (task) => thread.ask('fade', task),
    plan: (task) => thread.ask('plan', task),
    explain: (task) => thread.ask('explain', task),
    close: () => thread.close(),
  };
}

/** The log is kept: that it could not be read is no failure of the request. */
function tooHeavy(error: unknown, { file }: LogTask): LogRefusal {
  if (!(error instanceof RequestRefusal) || error.code !== 'calculation-too-heavy') throw error;
  const sentence = `${file.name} took too long or too much memory to read. Cut it to the part with the stops.`;
  return {
    kind: 'log-refusal',
    version: 1,
    code: 'log-too-heavy',
    sentence,
    source: { name: file.name, bytes: bytesOf(file) },
  };
}

function bytesOf({ content }: LogTask['file']): number {
  return content instanceof Uint8Array ? content.length : content.size;
}
