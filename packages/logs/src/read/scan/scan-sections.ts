import type { ByteSource } from '../../channels/byte-source.ts';
import { issueList } from '../../channels/issue-list.ts';
import type { FindOptions } from '../../stops/find-options.ts';
import { searchStops } from '../../stops/find-stops.ts';
import { feedBytes } from '../bytes/feed-bytes.ts';
import { firstBytes } from '../bytes/first-bytes.ts';
import { sizeOf } from '../bytes/size-of.ts';
import { byteRows } from '../csv/byte-rows.ts';
import { planCsv } from '../csv/plan-csv.ts';
import { RowStore } from '../csv/row-store.ts';
import { rowsRefusal } from '../csv/rows-refusal.ts';
import { tableOfRows } from '../csv/table-of-rows.ts';
import { startsAtZero } from '../csv/time-reader.ts';
import { withDoubts } from '../doubts/with-doubts.ts';
import type { LogRefusal } from '../log-refusal.ts';
import type { ReadOptions } from '../read-log.ts';
import { reportSeams } from '../time/report-seams.ts';
import type { LogScan } from './log-scan.ts';
import { sectionCut } from './section-cut.ts';
import { sectionFindings } from './section-findings.ts';

/** Bytes that are looked at before a file is read. */
const headLength = 1 << 20;
/** Values that are held at once, in all columns together. */
const usualCells = 1 << 21;

/** How a file is scanned. */
export type ScanOptions = ReadOptions &
  FindOptions & {
    /** Rows that are held at once; by default so many that all columns together take 16 MB. */
    readonly sectionRows?: number;
  };

/**
 * Reads a CSV log in sections that overlap, and finds the stops of each, so that memory does not grow with the file.
 * What is numbered, counted or located runs through the whole file. A stop counts in the one section that its end
 * falls to, where all of it and what it needs before lies (`sectionCut`).
 *
 * Assumes: what the search estimates from a log (rate, step of recording, noise, the level at which a brake counts as
 * applied) may be estimated in each section by itself.
 *
 * @param source - the log, in memory or read piece by piece
 * @param options - its name, a person's word on columns and stops, rows to a section
 * @returns what the log holds, with its stops; or why it can't be used
 * @throws OutOfRangeError where an option can't be
 */
export function scanSections(source: Uint8Array | ByteSource, options: ScanOptions): LogScan | LogRefusal {
  const bytes = sizeOf(source);
  const plan = planCsv(firstBytes(source, headLength), bytes, options);
  if (!plan.ok) return plan;
  const findings = sectionFindings();
  const seams = issueList();
  let [from, seen] = [-Infinity, 0];
  const take = (store: RowStore, isLast: boolean): void => {
    const finished = store.finishTime();
    const news = seen - store.dropped;
    reportSeams(finished, seams, { from: news, isLocal: plan.time.kind === 'clock' && plan.time.isLocal });
    seen = store.dropped + store.count;
    const table = tableOfRows(plan, store, finished, bytes);
    const search = searchStops({ ...table, issues: [] }, options);
    const ends = [...search.stops.map(({ endTime }) => endTime), ...search.rejected.map(({ time }) => time)];
    const cut = isLast ? null : sectionCut(table.time, ends);
    const to = cut?.moment ?? Infinity;
    findings.add({ table, news, search, doubts: withDoubts({ ...table, issues: [] }).issues, from, to });
    from = to;
    if (cut !== null) store.drop(cut.firstRow);
  };
  const store = new RowStore({
    columns: plan.columns,
    issues: plan.issues,
    width: plan.dialect.width,
    zero: startsAtZero(plan.time) ? 0 : null,
    capacity: options.sectionRows ?? Math.ceil(usualCells / (plan.columns.length + 1)),
    onFull: (full) => take(full, false),
  });
  feedBytes(source, plan.fileEncoding, byteRows(plan, store));
  const refused = rowsRefusal(plan.name, store.dropped + store.count, store.jumpsBack);
  if (refused !== null) return refused;
  take(store, true);
  return findings.scan(store.dropped + store.count, [...plan.issues.list(), ...seams.list()]);
}
