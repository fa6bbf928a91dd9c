import type { App } from '../app.ts';
import { findJob } from '../jobs/find-job.ts';
import { gatherLogs, type NamedLogs } from '../proof/gather-logs.ts';
import { proofRoute } from '../proof/proof-route.ts';
import type { ServerContext } from '../server-context.ts';
import { comparisonAnswer, comparisonRequest } from './comparison-schemas.ts';

/** Holds kept logs of a job against each other; keeps nothing. */
export function comparisonRoutes(app: App, { store, calculations }: ServerContext): void {
  proofRoute(app, {
    path: '/api/comparisons',
    operationId: 'compare',
    summary: 'What the measured stops before and after really show',
    body: comparisonRequest,
    answer: comparisonAnswer,
    calculate: async (body, picture) => {
      const { jobId, before, after, repeat = [], referenceBefore = [], referenceAfter = [] } = body;
      const { document } = await findJob(store, jobId);
      const named: readonly NamedLogs[] = [
        { key: 'before', ids: before, role: 'before' },
        { key: 'after', ids: after, role: 'after' },
        { key: 'repeat', ids: repeat, role: 'repeat' },
        { key: 'referenceBefore', ids: referenceBefore, role: 'reference-before' },
        { key: 'referenceAfter', ids: referenceAfter, role: 'reference-after' },
      ];
      const { seed, confounders, units, definition, expectation, nominalSpeed_m_s: nominalSpeed } = body;
      return calculations.compare({
        document,
        picture,
        logs: await gatherLogs(store, jobId, named),
        names: { before: body.beforeName, after: body.afterName },
        seed,
        confounders,
        units,
        ...(definition === undefined ? {} : { definition }),
        ...(expectation === undefined ? {} : { expectation }),
        ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
      });
    },
  });
}
