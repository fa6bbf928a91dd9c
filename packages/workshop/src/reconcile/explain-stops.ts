import type { JobSetUp } from '../job/job.ts';
import { nominalSpeedOf } from '../proof/nominal-speed-of.ts';
import { repeatedLog } from '../proof/repeated-log.ts';
import type { Reconciliation, ReconciliationRefusal } from '../results/reconciliation.ts';
import type { ExplainStopsInput } from './explain-stops-input.ts';
import { measuredStops } from './measured/measured-stops.ts';
import { refuseReconciliation } from './refuse-reconciliation.ts';
import { reconciled } from './reconciled.ts';

/**
 * Holds the model against measured stops: learns from those before what was not known of car, road and driver, expects the
 * change with that knowledge, and sets the stops after against it: how much of the gain is the brakes?
 *
 * Equation: as `learnFromStops`, `fitOfStops` and `changeExplained`
 * Assumes: `quickStop` is right for some car and day within the spreads of the job; the day's unknowns are the same in both
 * sets, and what is known to have differed is named. The share is that of the brakes alone: with other tires in the
 * set-up after, it is worked out on the old ones.
 *
 * @param input - job; both sets with their set-ups; speed, m/s; what else differed; draws, seed; units of the sentences
 * @returns the reconciliation, SI with the unit in each key; or one sentence that says what is missing
 * @throws OutOfRangeError for fewer than 100 draws
 */
export function explainStops(input: ExplainStopsInput): Reconciliation | ReconciliationRefusal {
  const { job, before, after = null, units = 'us' } = input;
  const setUps = [before, ...(after === null ? [] : [after])].map(({ setUp }) =>
    job.setUps.find(({ id }) => id === setUp),
  );
  const missing = setUps.findIndex((setUp) => setUp === undefined);
  if (missing >= 0)
    return refuseReconciliation({
      code: 'unknown-set-up',
      name: missing === 0 ? before.setUp : (after?.setUp ?? ''),
    });
  const reports = [...before.reports, ...(after?.reports ?? [])];
  const nominal = nominalSpeedOf({ reports, stated: input.nominalSpeed, units });
  if (!nominal.ok) return refuseReconciliation({ code: nominal.code });
  const repeated = repeatedLog({
    before: { name: before.setUp, reports: before.reports },
    after: { name: after?.setUp ?? '', reports: after?.reports ?? [] },
  });
  if (repeated !== null) return refuseReconciliation({ code: 'same-log', name: repeated.names[0] });
  const [first, second = null] = setUps as [JobSetUp, JobSetUp?];
  const measured = {
    before: measuredStops(before.reports, nominal.speed),
    after: after === null || after.reports.length === 0 ? null : measuredStops(after.reports, nominal.speed),
  };
  for (const [set, setUp] of [
    [measured.before, first],
    [measured.after, second],
  ] as const)
    if (set !== null && set.stops.length < 2)
      return refuseReconciliation({
        code: 'set-too-small',
        name: setUp?.title ?? '',
        count: set.stops.length,
      });
  return reconciled(input, { before: first, after: second, speed: nominal.speed, measured });
}
