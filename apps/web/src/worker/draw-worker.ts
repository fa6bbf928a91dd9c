import { handedOver, replyToDraws } from '@standstill/workshop';
import type { DrawMessage } from '@standstill/workshop';

const reply = replyToDraws();

self.addEventListener('message', (event: MessageEvent<DrawMessage>) => {
  const answer = reply(event.data);
  self.postMessage(answer, { transfer: handedOver(answer) });
});
