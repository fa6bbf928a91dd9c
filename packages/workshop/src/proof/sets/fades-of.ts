import { drivenOrder } from './driven-order.ts';
import type { FadeRuns } from './job-sets.ts';
import type { PlacedLog } from './placed-log.ts';

/** The fade runs, one set for each set-up, called by its id; several logs follow each other as driven. */
export function fadesOf(logs: readonly PlacedLog[]): readonly FadeRuns[] {
  const setUps = [...new Set(logs.map(({ run }) => run?.setUp ?? null))];
  return setUps.map((setUp) => {
    const own = drivenOrder(logs.filter(({ run }) => (run?.setUp ?? null) === setUp));
    return {
      setUp,
      set: {
        name: setUp ?? 'fade',
        reports: own.map(({ report }) => report),
        runs: own.map(({ run }) => run),
      },
    };
  });
}
