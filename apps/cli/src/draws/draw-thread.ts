import { parentPort } from 'node:worker_threads';
import { handedOver, replyToDraws } from '@standstill/workshop';
import type { DrawMessage } from '@standstill/workshop';

const reply = replyToDraws();

parentPort?.on('message', (message: DrawMessage) => {
  const answer = reply(message);
  parentPort?.postMessage(answer, handedOver(answer));
});
