import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '@standstill/storage';
import type { Store } from '@standstill/workshop';
import { newJobDocument } from '@standstill/workshop';
import type { App } from './app.ts';
import type { Calculations } from './calculations/calculations.ts';
import { createServer } from './create-server.ts';

/** A server on a store of its own, spoken to without a socket. */
export interface ServerUnderTest {
  readonly app: App;
  readonly store: Store;
  readonly stop: () => Promise<void>;
}

/** What a test changes of the usual parts. */
export interface TestParts {
  /** Address of the store; a fresh folder where absent. */
  readonly address?: string;
  readonly webFolder?: string;
  readonly calculations?: Calculations;
  /** In place of the opened store. */
  readonly store?: Store;
}

/**
 * @param parts - what differs from the usual
 * @returns a server whose ids are `id-1`, `id-2`, … and whose clock moves one second with each look
 */
export async function serverUnderTest(parts: TestParts = {}): Promise<ServerUnderTest> {
  const folder = mkdtempSync(join(tmpdir(), 'standstill-server-'));
  const store = parts.store ?? (await openStore({ address: parts.address ?? folder }));
  let ids = 0;
  let seconds = 0;
  const { calculations, webFolder = join(folder, 'no-app') } = parts;
  const app = createServer({
    store,
    webFolder,
    ids: () => `id-${(ids += 1)}`,
    clock: () => new Date(Date.UTC(2026, 10, 25, 8, 0, (seconds += 1))),
    ...(calculations === undefined ? {} : { calculations }),
  });
  await app.ready();
  const stop = async (): Promise<void> => {
    await app.close();
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { app, store, stop };
}

/**
 * @param title - title of the job
 * @returns a job document that has no mistakes, as JSON values
 */
export function jobDocument(title = 'Long pedal'): Record<string, unknown> {
  return JSON.parse(JSON.stringify(newJobDocument(title))) as Record<string, unknown>;
}

/**
 * Makes a job.
 *
 * @param app - the server
 * @param title - its title
 * @returns its id
 */
export async function makeJob(app: App, title?: string): Promise<string> {
  const answer = await app.inject({ method: 'POST', url: '/api/jobs', payload: jobDocument(title) });
  if (answer.statusCode !== 201) throw new Error(answer.body);
  return answer.json<{ id: string }>().id;
}
