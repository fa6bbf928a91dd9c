import type { ColumnChoices } from '@standstill/logs';
import type { Job } from '../../job/job.ts';
import type { LogColumnsDocument } from '../../job/document/log-columns-schema.ts';

/**
 * The columns that a job remembers for logs with one line of headings.
 *
 * @param job - the job
 * @param headings - all headings in one line, as the report of a log shows them; null where the log has none
 * @returns the choices; null where the job remembers nothing for these headings
 */
export function columnsFor(job: Pick<Job, 'logColumns'>, headings: string | null): ColumnChoices | null {
  const found = job.logColumns.find((one) => one.headings === headings);
  return found === undefined ? null : columnChoicesOf(found.columns);
}

function columnChoicesOf(columns: LogColumnsDocument['columns']): ColumnChoices {
  const stated = Object.entries(columns).flatMap(([role, choice]) =>
    choice === undefined ? [] : [[role, choice] as const],
  );
  return Object.fromEntries(stated) as ColumnChoices;
}
