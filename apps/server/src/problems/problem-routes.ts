import { z } from 'zod';
import type { App } from '../app.ts';
import { serverProblems } from './problem-codes.ts';
import type { ServerProblemCode } from './problem-codes.ts';
import { RequestRefusal } from './request-refusal.ts';

/** Makes the `type` of a problem an address that explains itself. */
export function problemRoutes(app: App): void {
  app.get(
    '/problems/:code',
    { schema: { hide: true, params: z.object({ code: z.string() }) } },
    (request, reply) => {
      const { code } = request.params;
      if (!isKnown(code)) throw new RequestRefusal('route-not-found', `There is no problem called ${code}.`);
      const { status, title } = serverProblems[code];
      return reply
        .type('text/plain; charset=utf-8')
        .send(`${title} (${status} ${code}). See docs/errors.md.\n`);
    },
  );
}

function isKnown(code: string): code is ServerProblemCode {
  return Object.hasOwn(serverProblems, code);
}
