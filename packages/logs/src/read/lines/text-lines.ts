/** One line of a log. */
export interface TextLine {
  readonly text: string;
  /** 1-based. */
  readonly number: number;
}

/** Characters; no line of a log is longer. */
const longestLine = 1 << 16;

/**
 * Cuts the pieces of a log into lines at CR LF, LF or a lone CR, all of which receivers and loggers write, in one file
 * too. Lines keep their number as an editor shows it; empty lines are left out.
 *
 * @param chunks - the text in pieces
 * @param tooLong - told of each line that is far too long for a log and was left out
 * @returns the lines in order
 */
export function* textLines(
  chunks: Iterable<string>,
  tooLong: (line: number) => void = () => undefined,
): Generator<TextLine> {
  let rest = '';
  let number = 0;
  let isDropping = false;
  for (const chunk of chunks) {
    const text = rest + chunk;
    const held = text.endsWith('\r') ? text.slice(0, -1) : text;
    const lines = held.split(/\r\n|\n|\r/);
    rest = (lines.pop() ?? '') + text.slice(held.length);
    for (const line of lines) {
      number += 1;
      const isWhole = !isDropping && line.length <= longestLine;
      isDropping = false;
      if (!isWhole) tooLong(number);
      else if (line !== '') yield { text: line, number };
    }
    if (rest.length > longestLine) {
      rest = rest.endsWith('\r') ? '\r' : '';
      isDropping = true;
    }
  }
  const last = rest.replace(/\r$/, '');
  if (isDropping || last.length > longestLine) tooLong(number + 1);
  else if (last !== '') yield { text: last, number: number + 1 };
}
