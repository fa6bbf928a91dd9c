import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { gatherLogs, type NamedLogs } from '../proof/gather-logs.ts';
import { proofRoute } from '../proof/proof-route.ts';
import type { ServerContext } from '../server-context.ts';
import { explanationAnswer, explanationRequest } from './explanation-schemas.ts';

/** Holds the model of a job against the stops in its kept logs; keeps nothing. */
export function explanationRoutes(app: App, { store, calculations }: ServerContext): void {
  proofRoute(app, {
    path: '/api/explanations',
    operationId: 'explain',
    summary:
      'How much of a measured change the brakes explain, what was learned of the car, and what stays open',
    body: explanationRequest,
    answer: explanationAnswer,
    calculate: async (body, picture) => {
      const { jobId, logs, before, after, nominalSpeed_m_s: nominalSpeed, ...rest } = body;
      const { document } = await findJob(store, jobId);
      const named: NamedLogs[] = [
        ...(before === undefined ? [] : [{ key: 'before', ids: before, role: 'before' as const }]),
        ...(after === undefined ? [] : [{ key: 'after', ids: after, role: 'after' as const }]),
        ...(logs === undefined ? [] : [{ key: 'logs', ids: logs }]),
      ];
      if (named.length === 0)
        named.push({ key: 'logs', ids: (await store.listLogs(jobId)).map(({ id }) => id) });
      return calculations.explain({
        ...rest,
        document,
        picture,
        logs: await gatherLogs(store, jobId, named),
        ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
      });
    },
  });
}
