import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { gatherLogs } from '../proof/gather-logs.ts';
import { proofRoute } from '../proof/proof-route.ts';
import type { ServerContext } from '../server-context.ts';
import { fadeAnswer, fadeRequest } from './fade-schemas.ts';

/** Says whether stops of kept logs get longer one after the other; keeps nothing. */
export function fadeRoutes(app: App, { store, calculations }: ServerContext): void {
  proofRoute(app, {
    path: '/api/fades',
    operationId: 'fade',
    summary: 'Whether stops driven one after the other get longer, and how hot the brakes get',
    body: fadeRequest,
    answer: fadeAnswer,
    calculate: async (body, picture) => {
      const { jobId, logs, against = [], nominalSpeed_m_s: nominalSpeed, ...rest } = body;
      const { document } = await findJob(store, jobId);
      const gather = (key: string, ids: readonly string[]) =>
        gatherLogs(store, jobId, [{ key, ids, role: 'fade' }]);
      return calculations.fade({
        ...rest,
        document,
        picture,
        logs: await gather('logs', logs),
        against: await gather('against', against),
        ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
      });
    },
  });
}
