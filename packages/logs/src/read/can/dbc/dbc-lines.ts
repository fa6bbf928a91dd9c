/** One line of a DBC file that may begin a statement. */
export interface DbcLine {
  readonly text: string;
  /** 1-based. */
  readonly number: number;
}

/**
 * The lines of a DBC file that are not inside a quoted text: comments may run over many lines, and those may look like
 * statements.
 *
 * @param text - the file
 * @returns the lines in order, with single blanks and none at the ends, empty ones left out
 */
export function* dbcLines(text: string): Generator<DbcLine> {
  let isQuoted = false;
  let number = 0;
  for (const line of text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/)) {
    number += 1;
    const wasQuoted = isQuoted;
    for (let i = 0; i < line.length; i += 1) {
      if (line[i] === '\\' && isQuoted) i += 1;
      else if (line[i] === '"') isQuoted = !isQuoted;
    }
    const trimmed = line.trim().replace(/\s+/g, ' ');
    if (!wasQuoted && trimmed !== '') yield { text: trimmed, number };
  }
}
