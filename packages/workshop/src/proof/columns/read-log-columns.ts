import { parse } from 'yaml';
import { z } from 'zod';
import { logColumnsSchema, type LogColumnsDocument } from '../../job/document/log-columns-schema.ts';

const document = z.strictObject({ logColumns: z.array(logColumnsSchema).max(200) });

export type LogColumnsReading =
  | { readonly ok: true; readonly columns: readonly LogColumnsDocument[] }
  | { readonly ok: false; readonly sentence: string };

/**
 * Reads remembered columns from a file of their own: the key `logColumns`, as in a job.
 *
 * @param text - YAML or JSON
 * @returns the columns by the headings that they are for; or the first thing that is wrong, in one sentence
 */
export function readLogColumns(text: string): LogColumnsReading {
  let value: unknown;
  try {
    value = parse(text, { maxAliasCount: 0 });
  } catch {
    return { ok: false, sentence: 'it is no YAML; a file that "channels --save" wrote is wanted.' };
  }
  const reading = document.safeParse(value);
  if (reading.success) return { ok: true, columns: reading.data.logColumns };
  const [issue] = reading.error.issues;
  const place = issue === undefined || issue.path.length === 0 ? '' : `${issue.path.join('.')}: `;
  return { ok: false, sentence: `${place}${(issue?.message ?? 'not understood').replace(/\.$/u, '')}.` };
}
