import type { GivenLog, Store } from '@standstill/workshop';
import { findLog } from '../logs/find-log.ts';
import { RequestRefusal } from '../problems/request-refusal.ts';
import type { KeptLog } from './kept-log.ts';

/** Most bytes of logs that one answer may stand on. */
const greatestTotal = 256 * 1024 * 1024;

/** Ids of kept logs under the key of the request that names them. */
export interface NamedLogs {
  readonly key: string;
  readonly ids: readonly string[];
  readonly role?: GivenLog['role'];
}

/**
 * Takes kept logs out of the store.
 *
 * @param store - where logs are kept
 * @param jobId - the job's id
 * @param named - which logs, and what they are taken for
 * @returns the logs with their bytes, in the order of the request
 * @throws RequestRefusal `log-not-found`, or `body-too-large` where they are too much for one answer
 */
export async function gatherLogs(
  store: Store,
  jobId: string,
  named: readonly NamedLogs[],
): Promise<readonly KeptLog[]> {
  const size = new Map((await store.listLogs(jobId)).map(({ id, bytes }) => [id, bytes]));
  const total = named.flatMap(({ ids }) => ids).reduce((sum, id) => sum + (size.get(id) ?? 0), 0);
  if (total > greatestTotal) {
    const [found, accepted] = [total, greatestTotal].map((bytes) => Math.round(bytes / 1e6));
    const detail = `The logs have ${found} MB together; accepted is up to ${accepted} MB.`;
    throw new RequestRefusal('body-too-large', detail);
  }
  const logs: KeptLog[] = [];
  for (const { key, ids, role } of named)
    for (const [index, id] of ids.entries()) {
      const { log, bytes } = await findLog(store, jobId, id);
      const file = { name: log.name, content: bytes };
      logs.push({ id, file, path: `${key}[${index}]`, ...(role === undefined ? {} : { role }) });
    }
  return logs;
}
