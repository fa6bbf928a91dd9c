import type { ReadOutcome } from '../read-log.ts';
import { reportSeams } from '../time/report-seams.ts';
import type { CsvPlan } from './csv-plan.ts';
import { rowsRefusal } from './rows-refusal.ts';
import { isSpeedless } from './is-speedless.ts';
import type { RowStore } from './row-store.ts';
import { tableOfRows } from './table-of-rows.ts';

/**
 * Makes the channel table of all rows of a file.
 *
 * @param plan - what the columns are
 * @param store - the rows
 * @param bytes - length of the file
 * @returns the channel table, or why it holds too little
 */
export function csvTable(plan: CsvPlan, store: RowStore, bytes: number): ReadOutcome {
  const { name, issues } = plan;
  const refused = rowsRefusal(name, store.count, store.jumpsBack);
  if (refused !== null) return refused;
  const finished = store.finishTime();
  reportSeams(finished, issues, { isLocal: plan.time.kind === 'clock' && plan.time.isLocal });
  const table = tableOfRows(plan, store, finished, bytes);
  if (table.channels.every(isSpeedless))
    issues.add('speed-never-given', null, () => 'The speed column holds no value at all.');
  return { ok: true, table: { ...table, issues: issues.list() } };
}
