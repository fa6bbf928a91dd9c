import { stringify } from 'yaml';
import type { LogColumnsDocument } from '../../job/document/log-columns-schema.ts';

/**
 * Writes remembered columns as a file of their own, which may also be pasted into a job.
 *
 * @param columns - by the headings that they are for
 * @returns YAML with the key `logColumns`
 */
export function printLogColumns(columns: readonly LogColumnsDocument[]): string {
  return stringify({ logColumns: columns }, { lineWidth: 0 });
}
