import type { AskKind, Asks, Request, Response } from '../../worker/protocol.ts';
import { openLane, type LaneWorker } from './lane.ts';

/** Long computations never hold up the quick ones: each has a worker of its own, started when first asked. */
const lanes = {
  quick: openLane(startWorker),
  long: openLane(startWorker),
  longest: openLane(startWorker),
};

const laneOf: Readonly<Record<AskKind, keyof typeof lanes>> = {
  'new-job': 'quick',
  'read-job': 'quick',
  'report-log': 'quick',
  predict: 'long',
  'open-prediction': 'long',
  'finish-prediction': 'long',
  compare: 'long',
  explain: 'longest',
  fade: 'longest',
  plan: 'longest',
};

function startWorker(): LaneWorker {
  return new Worker(new URL('../../worker/physics-worker.ts', import.meta.url), { type: 'module' });
}

/** Asks the worker; the signal takes the request back. */
export async function ask<K extends AskKind>(
  kind: K,
  question: Asks[K]['ask'],
  signal?: AbortSignal,
): Promise<Asks[K]['answer']> {
  const request: Request<K> = { kind, ask: question };
  const response = (await lanes[laneOf[kind]].ask(request, signal)) as Response<K>;
  if (!response.ok) throw new Error(response.message);
  return response.answer;
}
