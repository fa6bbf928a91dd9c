import { remoteHand } from '@standstill/workshop';
import type { DrawHand, DrawPool, DrawReply } from '@standstill/workshop';
import { openLane, type LaneWorker } from './lane.ts';

/** Workers are kept for as long as the page is open; more of them than this would be of little use. */
const mostWorkers = 8;

function startWorker(): LaneWorker {
  return new Worker(new URL('../../worker/draw-worker.ts', import.meta.url), { type: 'module' });
}

/**
 * Answers how many workers draw at the same time.
 *
 * @param cores - what the browser says that there is; some say nothing
 * @returns two at least, unless there is only one core
 */
export function countOfWorkers(cores: number | undefined): number {
  return Math.min(mostWorkers, Math.max(1, cores ?? 2));
}

/** Hands that stand on a worker each, started with their first request. */
export function handsOf(count: number, start: () => LaneWorker): readonly DrawHand[] {
  return Array.from({ length: count }, () => {
    const lane = openLane(start);
    return remoteHand((message) => lane.ask(message) as Promise<DrawReply>);
  });
}

/** The workers of this page that draw. */
export const drawWorkers: DrawPool = {
  hands: handsOf(countOfWorkers(globalThis.navigator?.hardwareConcurrency), startWorker),
};
