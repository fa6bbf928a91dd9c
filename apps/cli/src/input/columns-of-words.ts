import type { ReportLogOptions } from '@standstill/workshop';
import type { ColumnRole, ColumnWord } from './column-word.ts';

type Columns = NonNullable<ReportLogOptions['columns']>;
type Choice = { readonly name: string; readonly unit?: string };

/**
 * What is said of the columns of one log. A heading may itself end in `[unit]`: then it is meant whole, else the unit is
 * the person's word.
 *
 * @param words - as typed
 * @param headings - of the log; null where they are not known yet
 * @returns the columns by what they are; several where a role was given more than once
 */
export function columnsOfWords(words: readonly ColumnWord[], headings: readonly string[] | null): Columns {
  const known = new Set(headings?.map(folded) ?? []);
  const byRole = new Map<ColumnRole, Choice[]>();
  for (const { role, heading, apart } of words) {
    const whole = apart === null || known.has(folded(heading));
    byRole.set(role, [...(byRole.get(role) ?? []), whole ? { name: heading } : apart]);
  }
  return Object.fromEntries(
    [...byRole].map(([role, choices]) => [role, choices.length === 1 ? choices[0] : choices]),
  ) as Columns;
}

function folded(text: string): string {
  return text.toLowerCase().replace(/\s+/gu, ' ').trim();
}
