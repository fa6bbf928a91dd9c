/** Something in a log that was skipped, repaired or doubted; counted, and located by its first line. */
export interface LogIssue {
  readonly code: string;
  /** One sentence for a person. */
  readonly message: string;
  /** First line of the file that shows it, 1-based; null where it concerns the whole file. */
  readonly line: number | null;
  readonly count: number;
}
