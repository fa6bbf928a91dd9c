import { DrawFailedError } from './draw-failed-error.ts';
import type { DrawMessage, DrawReply } from './draw-message.ts';
import type { DrawHand } from './draw-pool.ts';

/**
 * The near end of a hand: a thread or worker that replies to one message after the other, by `replyToDraws`.
 *
 * @param send - sends a message; its reply, or why there will be none
 * @returns the hand
 */
export function remoteHand(send: (message: DrawMessage) => Promise<DrawReply>): DrawHand {
  let runs = 0;
  return (job, request) => {
    runs += 1;
    const run = runs;
    const opened = send({ kind: 'open-draws', run, job, request });
    opened.catch(() => {}); // whoever asks for the first range hears of it
    return async (from, to) => {
      requireGood(await opened);
      const { range } = requireGood(await send({ kind: 'draw-range', run, from, to }));
      if (range === null) throw new DrawFailedError('no range came back');
      return range;
    };
  };
}

function requireGood(reply: DrawReply): Extract<DrawReply, { ok: true }> {
  if (!reply.ok) throw new DrawFailedError(reply.message);
  return reply;
}
