/** A named record: 'milliseconds$NAME,field,…'. */
export interface RecordLine {
  /** s since the log's zero. */
  readonly clock: number;
  readonly name: string;
  readonly fields: readonly string[];
}

const shape = /^\s*(\d{1,15}(?:\.\d+)?)(?:,\d+)?\$([A-Z][A-Z0-9_]*)[,;](.*)$/;

/**
 * Takes a named record apart; commas and semicolons both part its fields.
 *
 * @param line - the line
 * @returns the record; null where the line is none
 */
export function recordLine(line: string): RecordLine | null {
  const parts = shape.exec(line);
  if (parts === null) return null;
  return {
    clock: Number(parts[1]) / 1000,
    name: parts[2]!,
    fields: parts[3]!.split(/[,;]/).map((field) => field.trim()),
  };
}
