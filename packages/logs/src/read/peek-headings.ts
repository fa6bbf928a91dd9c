import type { ByteSource } from '../channels/byte-source.ts';
import { issueList } from '../channels/issue-list.ts';
import { firstBytes } from './bytes/first-bytes.ts';
import { sizeOf } from './bytes/size-of.ts';
import { textChunks } from './bytes/text-chunks.ts';
import { textEncoding } from './bytes/text-encoding.ts';
import { columnLabels } from './csv/column-labels.ts';
import { detectDialect } from './csv/detect-dialect.ts';
import { isLogUnit } from './csv/unit-scale.ts';
import { sniffFormat } from './sniff-format.ts';

/** Bytes from the beginning that the dialect is found from, as the reader does. */
const sampleLength = 1 << 16;

/**
 * The headings of a CSV log in one line, without reading the log: what remembered columns are found again by, also where
 * the log could not be used without them.
 *
 * @param source - the log; only its beginning is looked at
 * @returns the headings as the channel table has them; null where they do not stand at the beginning or there are none
 */
export function peekHeadings(source: Uint8Array | ByteSource): string | null {
  const head = firstBytes(source, sampleLength);
  if (sniffFormat(head).kind !== 'csv') return null;
  const [start = ''] = textChunks(head, textEncoding(head));
  const dialect = detectDialect(start, sizeOf(source) <= sampleLength, isLogUnit);
  if (dialect === null || dialect.header.length === 0) return null;
  return columnLabels(dialect, dialect.preambleRows + 1, issueList()).join(' | ');
}
