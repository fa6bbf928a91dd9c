/**
 * One numbered step of the tables. What has been released is never edited: its checksum is kept in every database that
 * ran it. A change of mind is a new migration.
 */
export interface Migration {
  /** Counts up from 1 without gaps. */
  readonly number: number;
  /** What it brings, for a person who looks into the database. */
  readonly name: string;
  /** The statements for each engine, run in order in one transaction. */
  readonly statements: { readonly sqlite: readonly string[]; readonly postgresql: readonly string[] };
}
