import { createHash } from 'node:crypto';
import type { Store } from '@standstill/workshop';
import { readDocument } from '../jobs/read-document.ts';
import type { Demo } from './demo.ts';

const demoId = 'demo';

/**
 * Puts the demo job into a store that has no jobs. Where an earlier start broke off in between, its logs are completed.
 *
 * @param store - where jobs are kept
 * @param clock - answers the present time
 * @param ids - answers a new id each time
 * @param demo - the job, or what brings it when it is needed
 * @returns whether the demo was put in or completed
 * @throws RequestRefusal where the demo's document has mistakes
 */
export async function loadDemo(
  { store, clock, ids }: { readonly store: Store; readonly clock: () => Date; readonly ids: () => string },
  demo: Demo | (() => Promise<Demo>),
): Promise<boolean> {
  if (!(await isWanted(store))) return false;
  const { document: written, logs } = typeof demo === 'function' ? await demo() : demo;
  const { document, title } = readDocument(written);
  const at = clock().toISOString();
  await store.createJob({ id: demoId, title, document, at });
  for (const { name, bytes: content } of logs) {
    const sha256 = createHash('sha256').update(content).digest('hex');
    await store.addLog({ id: ids(), jobId: demoId, name, content, sha256, at: clock().toISOString() });
  }
  return true;
}

async function isWanted(store: Store): Promise<boolean> {
  const jobs = await store.listJobs();
  return jobs.every(({ id, version }) => id === demoId && version === 1);
}
