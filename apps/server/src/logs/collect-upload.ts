import type { IncomingMessage } from 'node:http';
import { RequestRefusal } from '../problems/request-refusal.ts';
import { uploadLimit } from './upload-limits.ts';

/**
 * Takes in the body of a request as it is, up to the limit. A body that says it is larger is not read at all, one that
 * turns out larger only up to there.
 *
 * @param source - the request
 * @returns its bytes
 * @throws RequestRefusal `body-too-large`, or `upload-incomplete` where the sender went away
 */
export function collectUpload(source: IncomingMessage): Promise<Uint8Array> {
  refuseAnnounced(source);
  return new Promise((resolve, reject) => {
    const pieces: Buffer[] = [];
    let size = 0;
    const end = (settle: () => void) => {
      source.off('data', take).off('end', finish).off('close', breakOff).off('error', breakOff).pause();
      settle();
    };
    const take = (piece: Buffer) => {
      size += piece.length;
      if (size > uploadLimit) end(() => reject(tooLarge()));
      else pieces.push(piece);
    };
    const finish = () => end(() => resolve(Buffer.concat(pieces, size)));
    const breakOff = () =>
      end(() => reject(new RequestRefusal('upload-incomplete', 'Nothing was kept. Send it again.')));
    source.on('data', take).once('end', finish).once('close', breakOff).once('error', breakOff);
  });
}

/**
 * @param source - a request, its body not yet read
 * @throws RequestRefusal `body-too-large` where its Content-Length says so
 */
export function refuseAnnounced(source: IncomingMessage): void {
  if (Number(source.headers['content-length'] ?? 0) > uploadLimit) throw tooLarge();
}

function tooLarge(): RequestRefusal {
  const limit = uploadLimit / 1024 / 1024;
  return new RequestRefusal(
    'body-too-large',
    `A log may have up to ${limit} MB. Nothing was kept. Cut the log to the stops.`,
  );
}
