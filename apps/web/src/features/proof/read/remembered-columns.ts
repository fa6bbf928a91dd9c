import type { JobDocument, LogColumnsDocument, LogReport } from '@standstill/workshop';
import { columnRoles, isColumnRole, type ColumnRole } from './column-roles.ts';

/** A person's word on one column. */
export interface ColumnWord {
  readonly role: ColumnRole;
  readonly name: string;
  readonly unit?: string;
  readonly scale?: number;
  /** The person is not sure. */
  readonly assumed?: boolean;
}

type Columns = LogColumnsDocument['columns'];
type Column = Exclude<NonNullable<Columns[ColumnRole]>, readonly unknown[]>;

/** The remembered words of a role, one by one. */
export function listedColumns(columns: Columns, role: ColumnRole): readonly Column[] {
  const said = columns[role];
  return said === undefined ? [] : Array.isArray(said) ? said : [said];
}

/** What the job remembers for logs with these headings. */
export function rememberedFor(
  remembered: readonly LogColumnsDocument[] = [],
  headings: string | null,
): Columns {
  return remembered.find((entry) => entry.headings === headings)?.columns ?? {};
}

/**
 * The columns with one word more. A column is one thing only; a role that a car has several of keeps what it had, the
 * guessed ones too, since a word on one of them would silence the guesses on the others.
 */
export function withColumn(columns: Columns, word: ColumnWord, channels: LogReport['channels']): Columns {
  const { role, ...column } = word;
  const cleared = withoutColumn(columns, word.name);
  if (!columnRoles[role].several) return { ...cleared, [role]: column };
  const said = listedColumns(cleared, role);
  const others = said.length > 0 ? said : guessedFor(role, word.name, channels);
  const all = [...others, column];
  return { ...cleared, [role]: all.length === 1 ? column : all };
}

function guessedFor(role: ColumnRole, except: string, channels: LogReport['channels']): readonly Column[] {
  return channels
    .filter(({ quantity, name, chosenBy }) => quantity === role && name !== except && chosenBy === 'guess')
    .map(({ name, unitAsRead }) => (unitAsRead === '' ? { name } : { name, unit: unitAsRead }));
}

/** The columns with what was said of one of them taken back. */
export function withoutColumn(columns: Columns, name: string): Columns {
  const entries = Object.keys(columns)
    .filter(isColumnRole)
    .flatMap((role) => {
      const left = listedColumns(columns, role).filter((column) => column.name !== name);
      const [first] = left;
      return first === undefined ? [] : [[role, left.length === 1 ? first : left] as const];
    });
  return Object.fromEntries(entries);
}

/** The job with the columns of one kind of log remembered; an entry that says nothing is taken out. */
export function rememberColumns(document: JobDocument, headings: string, columns: Columns): JobDocument {
  const others = (document.logColumns ?? []).filter((entry) => entry.headings !== headings);
  const all = Object.keys(columns).length === 0 ? others : [...others, { headings, columns }];
  const { logColumns: _before, ...rest } = document;
  return all.length === 0 ? rest : { ...rest, logColumns: all };
}
