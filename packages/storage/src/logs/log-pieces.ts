import type { Kysely, Transaction } from 'kysely';
import type { LogSummary } from '@standstill/workshop';
import { StoreError } from '../errors/store-error.ts';
import type { Tables } from '../tables.ts';
import { sha256 } from './sha256.ts';

/** Bytes in one row. PostgreSQL answers in hexadecimal text, so a large value would cost three times its size. */
const pieceSize = 1024 * 1024;

/**
 * Keeps the bytes of a log in pieces.
 *
 * @param transaction - the transaction that also makes the log's row
 * @param logId - the log's id
 * @param content - the bytes, kept as they are
 */
export async function insertPieces(
  transaction: Transaction<Tables>,
  logId: string,
  content: Uint8Array,
): Promise<void> {
  for (let start = 0; start < content.length; start += pieceSize) {
    const piece = content.subarray(start, start + pieceSize);
    const bytes = Buffer.from(piece.buffer, piece.byteOffset, piece.byteLength);
    const row = { log_id: logId, position: start / pieceSize, content: bytes };
    await transaction.insertInto('log_piece').values(row).execute();
  }
}

/**
 * Puts the bytes of a log together again and holds them against the SHA-256 taken when they came in.
 *
 * @param database - an open database
 * @param log - which log
 * @returns the bytes as they came in
 * @throws StoreError `store-log-damaged` where they differ
 */
export async function selectPieces(database: Kysely<Tables>, log: LogSummary): Promise<Uint8Array> {
  const content = new Uint8Array(log.bytes);
  let end = 0;
  for (let position = 0; end < log.bytes; position += 1) {
    const piece = await selectPiece(database, log.id, position);
    if (piece === undefined || end + piece.length > log.bytes) break;
    content.set(piece, end);
    end += piece.length;
  }
  if (end === log.bytes && sha256(content) === log.sha256) return content;
  throw new StoreError(
    'store-log-damaged',
    `The kept bytes of the log ${log.name} (${log.id}) have changed on the disk.`,
  );
}

async function selectPiece(
  database: Kysely<Tables>,
  logId: string,
  position: number,
): Promise<Uint8Array | undefined> {
  const row = await database
    .selectFrom('log_piece')
    .select('content')
    .where('log_id', '=', logId)
    .where('position', '=', position)
    .executeTakeFirst();
  return row?.content;
}
