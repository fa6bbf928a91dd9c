import { basename } from 'node:path';
import type { LogReport } from '@standstill/workshop';

/** How a word on stops that was typed now can be kept in the job, so that nobody has to type it again. */
export function keepLines(
  {
    reject = [],
    restore = [],
  }: { readonly reject?: readonly string[]; readonly restore?: readonly string[] },
  reports: readonly LogReport[],
): string[] {
  if (reject.length + restore.length === 0) return [];
  return reports.flatMap(({ source, stops }) => {
    const judged = stops.flatMap(({ judgement, start_s, end_s }) =>
      judgement === null
        ? []
        : [
            `{ at: ${((start_s + end_s) / 2).toFixed(1)} s, verdict: ${judgement.verdict}, reason: ${JSON.stringify(judgement.reason)} }`,
          ],
    );
    if (judged.length === 0) return [];
    return [
      `To keep it, write into the run of ${basename(source.name)} in the job: judgements: [${judged.join(', ')}]`,
    ];
  });
}
