import type { DrawnRange } from '../drawn-range.ts';
import { openDraws } from '../open-draws.ts';
import type { DrawMessage, DrawReply } from './draw-message.ts';

/**
 * The far end of a hand: opens the request that it is told, keeps it, and draws ranges of it.
 *
 * @returns the function that replies to one message after the other
 */
export function replyToDraws(): (message: DrawMessage) => DrawReply {
  let open: { readonly run: number; readonly draw: (from: number, to: number) => DrawnRange } | null = null;
  return (message) => {
    try {
      if (message.kind === 'open-draws') {
        open = { run: message.run, draw: openDraws(message.job, message.request) };
        return { ok: true, range: null };
      }
      if (open?.run !== message.run) return { ok: false, message: 'these draws were never opened here' };
      return { ok: true, range: open.draw(message.from, message.to) };
    } catch (error) {
      return { ok: false, message: error instanceof Error ? error.message : String(error) };
    }
  };
}

/**
 * Answers which memory of a reply can be handed over instead of copied.
 *
 * @param reply - the reply that is about to be sent
 * @returns its arrays' memory
 */
export function handedOver(reply: DrawReply): ArrayBuffer[] {
  if (!reply.ok || reply.range === null) return [];
  return reply.range.bySetUp.map(({ buffer }) => buffer as ArrayBuffer);
}
