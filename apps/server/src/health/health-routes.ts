import { z } from 'zod';
import type { App } from '../app.ts';
import { problemAnswers } from '../problems/problem-answers.ts';
import type { ServerContext } from '../server-context.ts';

const health = z.strictObject({
  status: z.literal('ok'),
  engine: z.enum(['sqlite', 'postgresql']),
  /** Number of the newest migration that the database has. */
  schemaVersion: z.number().int(),
  programVersion: z.string(),
});

/** Answers whether the server and its database work; asks the database each time. */
export function healthRoutes(app: App, { store, programVersion }: ServerContext): void {
  const schema = {
    operationId: 'getHealth',
    summary: 'Whether the server and its database work',
    response: { 200: health, ...problemAnswers },
  };
  app.get('/api/health', { schema }, async () => {
    const schemaVersion = await store.schemaVersion();
    return { status: 'ok' as const, engine: store.engine, schemaVersion, programVersion };
  });
}
